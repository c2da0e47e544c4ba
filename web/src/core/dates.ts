// Days in the user's own time zone and language.

// The phone's own date, for whatever depends on age.
export function today(now = new Date()): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

// A day in words, as "25 Nov 2026", or with its time, as "25 Nov, 14:30".
export function day(when: string, time = false): string {
  const language = document.documentElement.lang;
  const form: Intl.DateTimeFormatOptions = time ? { hour: '2-digit', minute: '2-digit' } : { year: 'numeric' };
  return new Date(when).toLocaleString(language === 'en' ? 'en-GB' : language, { day: 'numeric', month: 'short', ...form });
}
