import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { readSettings } from "../../../src/app/setup/environment.js";

interface Container {
  readonly image?: string;
  readonly user?: string;
  readonly read_only?: boolean;
  readonly cap_drop?: readonly string[];
  readonly security_opt?: readonly string[];
  readonly mem_limit?: string;
  readonly pids_limit?: number;
  readonly privileged?: boolean;
  readonly ports?: readonly string[];
  readonly volumes?: readonly string[];
  readonly command?: readonly string[];
  readonly environment: Readonly<Record<string, string>>;
  readonly depends_on?: Readonly<Record<string, { readonly condition: string }>>;
}

const text = readFileSync("docker-compose.yml", "utf8");
const { services } = parse(text, { merge: true }) as { services: Readonly<Record<string, Container>> };
const example = readFileSync(".env.example", "utf8");

describe("docker-compose.yml", () => {
  it("has the containers that it should", () => {
    expect(Object.keys(services).toSorted()).toEqual(["migrate", "postgres", "roles", "service", "worker"]);
  });

  // OWASP's Docker Security Cheat Sheet (named from memory): a user, capabilities, no new privileges, resources, a root that is only read.
  it.each(Object.entries(services))("lets %s do nothing but its work", (_name, container) => {
    expect(container).toMatchObject({ read_only: true, cap_drop: ["ALL"], security_opt: ["no-new-privileges:true"] });
    expect(container.mem_limit).toMatch(/^\d+[mg]$/);
    expect(container.pids_limit).toBeGreaterThan(0);
    expect(container.privileged).toBeUndefined();
    // Our image names its own user.
    if (container.image !== undefined) expect(container.user).toBe("postgres");
    // Published on the loopback address alone, or where the operator says.
    for (const port of container.ports ?? []) expect(port).toMatch(/^\$\{PUBLISH_ADDRESS:-127\.0\.0\.1\}:/);
  });

  it("publishes one port, and runs service and worker as a role that is not the owner", () => {
    const published = Object.entries(services).filter(([, { ports }]) => ports !== undefined);
    expect(published.map(([name]) => name)).toEqual(["service"]);
    for (const name of ["service", "worker"]) {
      const { environment, depends_on: after } = services[name] ?? { environment: {} };
      expect(environment["DATABASE_URL"]).toMatch(/^postgresql:\/\/prepwright_service:\$\{SERVICE_PASSWORD:\?/);
      expect(JSON.stringify(environment)).not.toContain("POSTGRES_PASSWORD");
      expect(after).toEqual({ migrate: { condition: "service_completed_successfully" } });
    }
    expect(services["migrate"]?.command).toEqual([
      "node",
      "dist/cli.js",
      "migrate",
      "--grant-to",
      "prepwright_service",
    ]);
    expect(services["migrate"]?.environment["DATABASE_URL"]).toMatch(
      /^postgresql:\/\/prepwright:\$\{POSTGRES_PASSWORD:\?/,
    );
  });

  it("takes no variable that .env.example does not name, but where readers seldom set it, and has no password of its own", () => {
    const asked = new Set([...text.matchAll(/(?<!\$)\$\{([A-Z_]+)/g)].map(([, name]) => name));
    asked.delete("PUBLISH_ADDRESS");
    expect([...asked].toSorted()).toEqual([...example.matchAll(/^([A-Z_]+)=/gm)].map(([, name]) => name).toSorted());
    expect(example).toMatch(/^POSTGRES_PASSWORD=$/m);
    expect(example).toMatch(/^SERVICE_PASSWORD=$/m);
  });

  it("sets variables of the service that there are, to values that it takes", () => {
    const { environment } = services["service"] ?? { environment: {} };
    const filled = Object.fromEntries(
      Object.entries(environment).map(([name, value]) => [
        name,
        value.replace(/\$\{[A-Z_]+(:-([^}]*)|[^}]*)\}/g, "$2"),
      ]),
    );
    expect(readSettings(filled)).toMatchObject({ ok: true, unknown: [] });
  });
});
