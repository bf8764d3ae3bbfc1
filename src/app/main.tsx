import { render } from 'solid-js/web';
import './styles/tokens.css';
import './styles/base.css';
import './styles/shell.css';
import './styles/fields.css';
import './styles/pages.css';
import './styles/pictures.css';
import './styles/plan/plan-charts.css';
import './styles/run/current-step.css';
import './styles/run/run-parts.css';
import './styles/run/run.css';
import './styles/record/record.css';
import './styles/print.css';
import { App } from './app.tsx';

const root = document.getElementById('app');
if (root) render(() => <App />, root);
