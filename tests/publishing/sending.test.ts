import { describe, expect, it } from "vitest";
import { sendingOf } from "../../src/publishing/sending.ts";

describe("sendingOf", () => {
  it("is what the settings say, else a contact that is an address of mail, else nowhere", () => {
    const sending = { email: "", url: "https://scheme.example/send", text: "Thank you." };
    expect(sendingOf({ sending, contact: "a@b.example" })).toEqual(sending);
    expect(sendingOf({ sending: undefined, contact: "a@b.example" }).email).toBe("a@b.example");
    expect(sendingOf({ sending: undefined, contact: "the officer" })).toEqual({ email: "", url: "", text: "" });
  });
});
