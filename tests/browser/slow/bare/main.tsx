import { createSignal } from 'solid-js';
import { render } from 'solid-js/web';

/** The least page of the same framework: a number, and what counts it up. */
function Bare() {
  const [count, setCount] = createSignal(0);
  return (
    <main>
      <h1>{count()}</h1>
      <button class="main-action" type="button" onClick={() => setCount((n) => n + 1)}>
        Count
      </button>
    </main>
  );
}

const root = document.getElementById('app');
if (root) render(() => <Bare />, root);
