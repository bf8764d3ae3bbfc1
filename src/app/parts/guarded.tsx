import { createContext, ErrorBoundary, type JSX, useContext } from 'solid-js';
import { t } from '../context/language.ts';
import { Action } from './press/action.tsx';

/** Names of the parts that can break by themselves, as the record tells them. */
export type PartName =
  'run' | 'lights' | 'step' | 'timers' | 'kitchen-picture' | 'side' | 'sheet' | 'rest-day' | 'page';

/** Told of each part that could not be drawn. */
export const BrokenPart = createContext<(part: PartName, error: unknown) => void>(() => undefined);

/**
 * One part of a page. When it cannot be drawn it says so in its place, with a
 * way to try again and with what is needed of it most; all around it lives on.
 */
export function Guarded(props: {
  part: PartName;
  /** In place of what broke; plain, so that it cannot break by the same thing. */
  instead?: JSX.Element;
  children: JSX.Element;
}) {
  const tell = useContext(BrokenPart);
  return (
    <ErrorBoundary
      fallback={(error: unknown, again) => {
        tell(props.part, error);
        return (
          <div class="broken-part" role="alert" data-broken={props.part}>
            <p>{t('shell.broken')}</p>
            {props.instead}
            <Action class="button" name="draw-again" onPress={again}>
              {t('shell.broken.again')}
            </Action>
          </div>
        );
      }}
    >
      {props.children}
    </ErrorBoundary>
  );
}
