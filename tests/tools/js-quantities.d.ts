/** The little of the units library that the tests use; it ships no types. */
declare module 'js-quantities' {
  interface Qty {
    readonly scalar: number;
    to(unit: string): Qty;
    mul(by: Qty | number): Qty;
    div(by: Qty | number): Qty;
  }
  export default function Qty(value: number, unit: string): Qty;
}
