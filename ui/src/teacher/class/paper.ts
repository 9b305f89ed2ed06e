export type Paper = 'a4' | 'letter';

/** Sets the paper size for printing. Returns what undoes it. */
export function usePaper(paper: Paper): () => void {
  // A sheet of its own, because the page's policy allows no style in the page.
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(`@page { size: ${paper === 'a4' ? 'A4' : 'letter'}; margin: 12mm; }`);
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  return () => {
    document.adoptedStyleSheets = document.adoptedStyleSheets.filter((one) => one !== sheet);
  };
}
