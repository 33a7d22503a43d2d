import type { Template } from '../editor/types';
import { e } from '../editor/words';

/** Sessions in a week, as a number or a range: "4", "3 to 5". */
function perWeek(template: Template): string {
  const counts = template.weeks.map((week) => week.length);
  const [low, high] = [Math.min(...counts), Math.max(...counts)];
  return low === high ? String(low) : e('fromTo', { low, high });
}

/** "3 different sessions, 3 to 4 a week, 6 weeks written; the last one repeats until the end." */
export function templateFacts(template: Template): string {
  const sessions = e('templateSessions', { n: template.sessions.length });
  const weeks = e('templateWeeks', { n: template.weeks.length });
  return e('templateFacts', { sessions, perWeek: perWeek(template), weeks });
}
