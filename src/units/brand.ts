declare const unit: unique symbol

/** The unit a number carries in its type, so that a bare number or another unit is refused by the compiler. */
export interface In<Name extends string> {
  readonly [unit]: Name
}

export type Brand<Name extends string> = number & In<Name>

/** Millimetres: the only unit of length inside the program. */
export type Mm = Brand<'mm'>

/** Degrees: what a saw's scale and a person say. */
export type Degrees = Brand<'degrees'>

/** Radians: what the mathematics uses, counter-clockwise positive. */
export type Radians = Brand<'radians'>

/** PDF user-space units: 72 to the inch (ISO 32000-1, 8.3.2.3). */
export type Points = Brand<'points'>

/** Kilograms. */
export type Kilograms = Brand<'kg'>

/** Degrees Celsius. */
export type Celsius = Brand<'celsius'>

/** Hundredths: of the air's humidity, or of oven-dry wood as its moisture. */
export type Percent = Brand<'percent'>

export type Hours = Brand<'hours'>
