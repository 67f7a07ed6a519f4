import { answerNest, type NestTask } from "@lapline/nest/work";

/** The search off the page's own thread, so that a button stays quick while it runs. */
self.addEventListener("message", (event: MessageEvent<NestTask>) => {
  answerNest(event.data, (said) => self.postMessage(said));
});
