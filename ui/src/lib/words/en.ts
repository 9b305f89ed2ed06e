/** The English message files of the screens; a chunk of its own, loaded when it is spoken. */
export default import.meta.glob<string>(
  [
    '../../../../shared/messages/en/*.ftl',
    // What only prints say stays with them, and exercises bring their own words.
    '!../../../../shared/messages/en/{reports,items-*,figures,misconceptions}.ftl',
  ],
  {
    query: '?raw',
    import: 'default',
    eager: true,
  },
);
