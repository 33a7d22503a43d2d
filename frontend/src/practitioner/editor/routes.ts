import type { Route } from '../../shared/router';
import { ExercisePage } from '../exercises/ExercisePage';
import { ExercisesPage } from '../exercises/ExercisesPage';
import { TemplatesPage } from '../templates/TemplatesPage';
import { EditOwnPage, NewOwnPage } from '../own/OwnPage';
import { o } from '../own/words';
import { EditorPage } from './EditorPage';
import { e } from './words';

/** Program editor, templates, library. */
export const editorRoutes: readonly Route[] = [
  { path: '/clients/:id/program', page: EditorPage, title: () => e('programTitle') },
  { path: '/templates', page: TemplatesPage, title: () => e('templates') },
  { path: '/exercises', page: ExercisesPage, title: () => e('exercises') },
  { path: '/exercises/own/new', page: NewOwnPage, title: () => o('newTitle') },
  { path: '/exercises/own/:code', page: EditOwnPage, title: () => o('change') },
  { path: '/exercises/:code', page: ExercisePage, title: () => e('exercise') },
];
