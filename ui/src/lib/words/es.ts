/** The Spanish message files; a chunk of its own, loaded when it is spoken. */
export default import.meta.glob<string>('../../../../shared/messages/es/*.ftl', {
  query: '?raw',
  import: 'default',
  eager: true,
});
