/** What protects a student's work from a browser that clears it. */

/** Asks the browser not to clear what it keeps when space is short. It may refuse. */
export function askToKeep(): void {
  // Missing where the page does not come by https.
  const { storage } = navigator as Partial<Navigator>;
  void storage?.persist().catch(() => false);
}

const carried = (student: string) => `carried-${student}`;

/** Notes that a student saved a carry file today. */
export function noteCarried(student: string): void {
  try {
    localStorage.setItem(carried(student), new Date().toLocaleDateString('sv'));
  } catch {
    // Without the note the reminder comes a little early.
  }
}

/** Forgets this of a student who is removed. */
export function forgetCarried(student: string): void {
  try {
    localStorage.removeItem(carried(student));
  } catch {
    // Then there is no note either.
  }
}

/** Forgets this of all students. */
export function forgetAllCarried(): void {
  try {
    Object.keys(localStorage)
      .filter((name) => name.startsWith(carried('')))
      .forEach((name) => localStorage.removeItem(name));
  } catch {
    // Then there is no note either.
  }
}

/** The date of a student's last carry file, as `YYYY-MM-DD`. */
export function lastCarried(student: string): string | null {
  try {
    return localStorage.getItem(carried(student));
  } catch {
    return null;
  }
}
