/** The practitioner pages in English. Terms of the trade. */
const en = {
  appName: 'Steadfoot',
  caseload: 'Caseload',
  notFoundTitle: 'This page is not here',
  notFoundText: 'The link may be old. Nothing was changed.',
  goToCaseload: 'Go to the caseload',
} as const;
export default en;
