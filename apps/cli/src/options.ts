import { isLocalDate } from '@deckround/register';
import { InvalidArgumentError } from 'commander';

export function dateOption(text: string): string {
  if (!isLocalDate(text)) throw new InvalidArgumentError('Write a date like 2014-06-16.');
  return text;
}

export function wholeOption(min: number, max: number) {
  return (text: string): number => {
    const value = Number(text);
    if (!/^\d+$/.test(text) || value < min || value > max)
      throw new InvalidArgumentError(`Write a whole number from ${min} to ${max}.`);
    return value;
  };
}
