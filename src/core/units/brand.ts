declare const unit: unique symbol;

/**
 * A number that says what it counts, so that a length cannot be handed over where a force is meant.
 * Shape: an ordinary number when the program runs; sums are plain numbers again and must be made anew by the unit's own constructor.
 */
export type Brand<Name extends string> = number & { readonly [unit]: Name };
