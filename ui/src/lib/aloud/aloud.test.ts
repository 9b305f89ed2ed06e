import { afterEach, expect, test } from 'vitest';
import { inTurn, speakable } from './speakable';
import { exact, setDecimalSign, setLanguage } from '../words';

afterEach(() => {
  setDecimalSign('language');
  setLanguage('en');
});

test('numbers for a voice are the same in every country', () => {
  expect(speakable('Round 1,234 to the nearest 100.')).toBe('Round 1234 to the nearest 100.');
  expect(speakable('What is 3.05 + 2?')).toBe('What is 3 point 0 5 + 2?');
  expect(speakable('You have 3.5, 4 and 12.')).toBe('You have 3 point 5, 4 and 12.');
  expect(speakable('It is 3:05.')).toBe('It is 3:05.');
});

test('the sign is said as it is written', () => {
  setDecimalSign('comma');
  expect(speakable(`${exact('1234.5')} and 2.`)).toBe('1234 comma 5 and 2.');
  setLanguage('es');
  expect(speakable(`Son ${exact('0.25')}.`)).toBe('Son 0 coma 2 5.');
  setDecimalSign('point');
  expect(speakable(`Son ${exact('0.25')}.`)).toBe('Son 0 punto 2 5.');
});

test('amounts are said as money', () => {
  expect(speakable('She pays $3.50.')).toBe('She pays 3 dollars and 50 cents.');
  expect(speakable('She pays $1,200, he $1.01.')).toBe(
    'She pays 1200 dollars, he 1 dollar and 1 cent.',
  );
  setDecimalSign('comma');
  setLanguage('es');
  expect(speakable('Paga $2,05.')).toBe('Paga 2 dólares con 5 centavos.');
});

test('pieces are read one after the other with a stop between', () => {
  expect(inTurn(['Find 3', ' ', 'Why?', 'x'])).toBe('Find 3. Why? x.');
});

test('a blank is read out', () => {
  expect(speakable('3 + □ = 5')).toBe('3 + blank = 5');
});
