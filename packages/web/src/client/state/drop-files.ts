import { openCampFile } from "./open-file.ts";

/** A camp file dropped anywhere on the page is opened, as if it had been chosen. */
export function followDrops(): void {
  addEventListener("dragover", (event) => event.preventDefault());
  addEventListener("drop", (event) => {
    event.preventDefault();
    const file = event.dataTransfer?.files[0];
    if (file !== undefined) void openCampFile(file);
  });
}
