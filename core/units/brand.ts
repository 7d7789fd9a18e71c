declare const brand: unique symbol

/** A number that carries its unit in its type, so that ticks are never added to cents. */
export type Brand<Name extends string> = number & { readonly [brand]: Name }
