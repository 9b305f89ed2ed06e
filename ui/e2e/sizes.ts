/** Sizes of screens in CSS pixels. */
export const SIZES = {
  tablet: { width: 800, height: 1280 },
  landscape: { width: 1280, height: 800 },
  phone: { width: 360, height: 740 },
  narrow: { width: 320, height: 640 },
};

/** A student's tablet. */
export const TOUCH = { viewport: SIZES.tablet, hasTouch: true, isMobile: true };
/** A teacher's computer, with a mouse. */
export const DESK = { viewport: SIZES.landscape, hasTouch: false, isMobile: false };
