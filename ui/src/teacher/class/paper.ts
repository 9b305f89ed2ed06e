export type Paper = 'a4' | 'letter';

/** Sets the paper size for printing. Returns a function that unsets it. */
export function usePaper(paper: Paper): () => void {
  // A style sheet object, because the page's policy refuses style elements.
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(`@page { size: ${paper === 'a4' ? 'A4' : 'letter'}; margin: 12mm; }`);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  return () => {
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== sheet);
  };
}
