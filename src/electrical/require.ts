/**
 * Guards for the numeric functions: what is out of range throws at the door, so that nothing beyond it can be NaN.
 * @throws RangeError naming the quantity, what was found and what is expected
 */
export function requireBetween(name: string, value: number, low: number, high: number): void {
  if (!(value >= low && value <= high)) {
    throw new RangeError(`${name} is ${value}; expected ${low} to ${high}`);
  }
}

/** Above zero and finite. */
export function requirePositive(name: string, value: number): void {
  if (!(value > 0 && value < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`${name} is ${value}; expected a finite number above 0`);
  }
}

/** Zero or more, and finite. */
export function requireNotNegative(name: string, value: number): void {
  if (!(value >= 0 && value < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`${name} is ${value}; expected a finite number of 0 or more`);
  }
}
