export default class PlainEnvironment {
  handleTestEvent(event: object): Promise<void>;
}
