import { expect, test } from "vitest";
import { onBoth } from "./onBoth";

const LATER = "2026-06-10T09:00:00.000Z";

onBoth("the devices", (under) => {
  const add = (name: string, tokenHash: string, role: "bench" | "keeper" = "bench") =>
    under().shop.devices.add({ name, role, tokenHash, expiresAt: LATER });

  test("are found by the hash of their token, and listed without it", async () => {
    const phone = await add("Phone in the bay", "h1");
    const laptop = await add("Laptop", "h2", "keeper");
    const at = "2026-04-11T09:00:00.000Z";
    expect(phone).toMatchObject({ role: "bench", pairedAt: at, seenAt: at, expiresAt: LATER });
    const shop = await under().reopen();
    expect(await shop.devices.find("h1")).toEqual(phone);
    expect(await shop.devices.find("h3")).toBeNull();
    expect(await shop.devices.find("")).toBeNull();
    expect(await shop.devices.list()).toEqual([laptop, phone]);
    expect(JSON.stringify(await shop.devices.list())).not.toContain("h1");
  });

  test("are gone for good once revoked, and their name goes to no other", async () => {
    const phone = await add("Phone", "h1");
    expect(await under().shop.devices.revoke(phone.id, "this machine")).toBe(true);
    expect(await under().shop.devices.revoke(phone.id, "this machine")).toBe(false);
    expect(await under().shop.devices.find("h1")).toBeNull();
    await under().shop.devices.see(phone.id, "2099-01-01T00:00:00.000Z");
    expect(await under().shop.devices.find("h1")).toBeNull();
    expect(await under().shop.devices.list()).toEqual([]);
    expect((await add("phone", "h2")).name).toBe("phone 2");
  });

  test("run out, and are let in longer where they are seen before", async () => {
    const [one, two] = [await add("One", "h1"), await add("Two", "h2")];
    await under().shop.devices.see(two.id, "2026-08-01T00:00:00.000Z");
    const shop = await under().reopen({ now: () => new Date("2026-06-10T09:00:00Z") });
    expect(await shop.devices.find("h1")).toBeNull();
    expect(await shop.devices.find("h2")).toMatchObject({ id: two.id });
    expect(await shop.devices.rename(one.id, "Another", "x")).toBe("gone");
  });

  test.each(["this machine", "This  Machine", "ｄｅｍｏ"])("do not pass for %s", async (name) => {
    expect((await add(name, "h1")).name).toBe(`${name} 2`);
    expect(await under().shop.devices.rename((await add("Phone", "h2")).id, name, "x")).toBe("taken");
  });

  test("are renamed, but not to another's name", async () => {
    const [one, two] = [await add("One", "h1"), await add("Two", "h2")];
    expect(await under().shop.devices.rename(one.id, "TWO", "x")).toBe("taken");
    expect(await under().shop.devices.rename(two.id, "TWO", "x")).toBe("renamed");
    expect(await under().shop.devices.find("h2")).toMatchObject({ name: "TWO", role: "bench" });
  });

  test("of one name paired at once are told apart", async () => {
    const all = await Promise.all(Array.from({ length: 8 }, (_, i) => add("Phone", `h${i}`)));
    expect(new Set(all.map(({ name }) => name)).size).toBe(8);
  });

  test("are no part of a copy of the shop: whoever has one lets nobody in", async () => {
    await add("Phone", "token-hash");
    let text = "";
    await under().shop.export(async (lines) => {
      text += lines;
    });
    expect(text).not.toContain("token-hash");
    expect(text).not.toContain("Phone");
  });
});
