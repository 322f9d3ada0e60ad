# Three stages: build with everything, install what runs, keep only that. tests/release/image.test.ts carries out these lines.
FROM node:24-bookworm-slim AS build
WORKDIR /app
COPY package.json package-lock.json .npmrc ./
RUN npm ci --no-audit
COPY . .
RUN npm run build

FROM node:24-bookworm-slim AS packages
WORKDIR /app
COPY package.json package-lock.json .npmrc scripts/release/keep-shipped.mjs ./
RUN npm ci --omit=dev --ignore-scripts --no-audit && node keep-shipped.mjs

FROM node:24-bookworm-slim
ENV NODE_ENV=production HOST=0.0.0.0 PORT=4000
WORKDIR /app
COPY LICENSE package.json schema.graphql openapi.json ./
COPY prisma/migrations ./prisma/migrations
COPY --from=packages /app/node_modules ./node_modules
COPY --from=build /app/dist ./dist
# All of it belongs to root and is only read: run it with a read-only root and a /tmp in memory.
USER node
EXPOSE 4000
HEALTHCHECK --interval=10s --timeout=3s --start-period=20s --retries=6 CMD ["node", "-e", "fetch(`http://127.0.0.1:${process.env.PORT}/readyz`).then((r) => process.exit(r.ok ? 0 : 1), () => process.exit(1))"]
# Objects that live no longer than a request get 64 MB: see "How large" in docs/operations.md.
CMD ["node", "--max-semi-space-size=64", "dist/main.js"]
