/** An element or property: its text, or what stands inside. Names are without prefix, in small letters. */
export interface Node {
  readonly name: string;
  text: string;
  readonly children: Node[];
}
