import { render } from 'solid-js/web';
import './styles/tokens.css';
import './styles/base.css';
import './styles/shell.css';
import './styles/run/current-step.css';
import './styles/run/gate.css';
import './styles/run/run-parts.css';
import './styles/run/run.css';
import './styles/run/run-layouts.css';
import { App } from './app.tsx';
import { chooseLanguage } from './context/language.ts';
import { languageAsked } from './context/route.ts';

/** Shows the page when its sentences are here, in the language the address or the device asks for. */
async function start(root: HTMLElement): Promise<void> {
  const asked = languageAsked(location.hash);
  try {
    await chooseLanguage([...(asked === undefined ? [] : [asked]), ...navigator.languages]);
  } catch (error) {
    // No sentence is here to say it with: the page itself has one.
    document.getElementById('load-failed')?.removeAttribute('hidden');
    throw error;
  }
  render(() => <App />, root);
}

const root = document.getElementById('app');
if (root) void start(root);
