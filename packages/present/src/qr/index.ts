export { formatQrText } from "./formatQrText";
export { QR_QUIET, qrRuns } from "./qrRuns";
