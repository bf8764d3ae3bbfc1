import { render } from 'solid-js/web';
import './look/tokens.css';
import './look/base.css';
import './look/shell.css';
import './look/fields.css';
import './look/places.css';
import './look/pictures.css';
import './look/plan-pictures.css';
import './look/stage.css';
import './look/run-parts.css';
import './look/run.css';
import './look/record.css';
import './look/print.css';
import { App } from './app.tsx';

const root = document.getElementById('app');
if (root) render(() => <App />, root);
