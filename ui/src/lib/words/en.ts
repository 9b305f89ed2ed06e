/** The English message files; a chunk of its own, loaded when it is spoken. */
export default import.meta.glob<string>('../../../../shared/messages/en/*.ftl', {
  query: '?raw',
  import: 'default',
  eager: true,
});
