// What the tests use of Node's own test runner.

declare module "node:test" {
	export function test(name: string, run: () => void | Promise<void>): void;
	export const mock: {
		timers: { enable(options: { apis: string[]; now?: number }): void; tick(milliseconds: number): void; reset(): void };
	};
}

declare module "node:assert/strict" {
	const assert: {
		ok(value: unknown, message?: string): asserts value;
		equal(got: unknown, want: unknown, message?: string): void;
		deepEqual(got: unknown, want: unknown, message?: string): void;
	};
	export default assert;
}

declare module "node:fs" {
	export function readFileSync(path: string, encoding: "utf8"): string;
	export function writeFileSync(path: string, text: string): void;
}

declare const process: { readonly argv: readonly string[] };
