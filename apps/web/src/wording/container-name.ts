import type { ContainerType } from "@cornerway/schema";

/** ISO 668 designations as people say them. */
export const containerName: Record<ContainerType, string> = {
  "1EEE": "45 ft high cube",
  "1EE": "45 ft, 8 ft 6 in high",
  "1AAA": "40 ft high cube",
  "1AA": "40 ft, 8 ft 6 in high",
  "1A": "40 ft, 8 ft high",
  "1BBB": "30 ft high cube",
  "1BB": "30 ft, 8 ft 6 in high",
  "1CCC": "20 ft high cube",
  "1CC": "20 ft, 8 ft 6 in high",
  "1C": "20 ft, 8 ft high",
  "1D": "10 ft, 8 ft high",
};
