/** An expected failure of a command: said in plain words, without a stack. 2 = the input, 1 = anything else. */
export class CliError extends Error {
  constructor(
    message: string,
    readonly exitCode = 2,
  ) {
    super(message);
  }
}
