import { message, type Message } from '../../../core/messages/index.ts';

const HOUR_S = 3600;

/** What a countdown shows: hours and minutes from an hour up, minutes and seconds below. */
export type CountdownDigits =
  | { readonly hours: number; readonly minutes: number }
  | { readonly minutes: number; readonly seconds: number };

/**
 * What is left as a clock shows it, never less than is left; below zero it
 * counts up, never more than has passed by a minute.
 */
export function countdownDigits(leftS: number): CountdownDigits {
  const wholeS = Math.ceil(Math.abs(leftS));
  if (wholeS < HOUR_S) return { minutes: Math.floor(wholeS / 60), seconds: wholeS % 60 };
  const minutes = leftS > 0 ? Math.ceil(wholeS / 60) : Math.floor(wholeS / 60);
  return { hours: Math.floor(minutes / 60), minutes: minutes % 60 };
}

/** The same in one line, for lists and for screen readers. */
export function countdown(leftS: number): Message {
  const digits = countdownDigits(leftS);
  return 'hours' in digits
    ? message('common.countdown.hours', digits)
    : message('common.countdown.minutes', digits);
}
