/** What is asked once a pairing, when everything is sent: no part of the app's first load. */
export { takeHistory } from './history';
export { takeQuestions } from './questions';
