export default class PageTextEnvironment {
  handleTestEvent(event: object): Promise<void>;
}
