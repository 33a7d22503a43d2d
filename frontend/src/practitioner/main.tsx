import '../shared/css/index.css';
import { render } from 'preact';
import { Pages, startRouter } from '../shared/router';
import { startLanguage } from '../shared/words/mechanism';
import { otherwise, routes } from './routes';

startRouter('/desk');
await startLanguage();
render(<Pages routes={routes} otherwise={otherwise} />, document.getElementById('app')!);
