/** The English message files; a chunk of its own, loaded when it is spoken. */
export default import.meta.glob<string>(
  // What only prints say stays with them.
  ['../../../../shared/messages/en/*.ftl', '!../../../../shared/messages/en/reports.ftl'],
  {
    query: '?raw',
    import: 'default',
    eager: true,
  },
);
