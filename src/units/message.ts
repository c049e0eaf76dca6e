/**
 * A sentence still to be put into words. Floors below `state` carry these,
 * never sentences; `view` looks the key up in the message files. A value that
 * is a quantity names its unit so that the view can show it as the reader chose.
 */
export interface Message {
  readonly key: string;
  readonly values?: Readonly<Record<string, MessageValue>>;
}

export type MessageValue =
  | string
  | number
  | { readonly value: number; readonly unit: 'mm' | 'deg' | 'mm2' | 'cm3/m' | 'kg/m' | 'ratio' }
  /** another message, put into words first and then inserted */
  | Message;
