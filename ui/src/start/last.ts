let last: string | null = null;

/** The student whose screens were open last since the program started. */
export function lastStudent(): string | null {
  return last;
}

export function rememberStudent(id: string): void {
  last = id;
}
