/** Caches formatters: making one takes a hundred times as long as using it. */
function kept<Options, Format>(make: (locale: string, options: Options) => Format) {
  const made = new Map<string, Format>();
  return (locale: string, options: Options): Format => {
    const key = locale + JSON.stringify(options);
    const format = made.get(key) ?? make(locale, options);
    made.set(key, format);
    return format;
  };
}

export const numberFormat = kept(
  (locale, options: Intl.NumberFormatOptions) => new Intl.NumberFormat(locale, options),
);
export const dateFormat = kept(
  (locale, options: Intl.DateTimeFormatOptions) => new Intl.DateTimeFormat(locale, options),
);
export const listFormat = kept(
  (locale, options: Intl.ListFormatOptions) => new Intl.ListFormat(locale, options),
);
