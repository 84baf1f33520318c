/// <reference path="../.astro/types.d.ts" />

declare module 'virtual:records' {
  const records: import('./data/expand').Tables;
  export default records;
}
