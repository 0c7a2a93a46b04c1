# The service and its worker; docker-compose.yml says how they run. Two stages: what builds is left behind.
# Base images are pinned to a release; where they are fetched for good, pin them to their digest as well.
FROM node:22.23.3-bookworm-slim AS build
WORKDIR /srv/cornerway
COPY . .
RUN npm ci --ignore-scripts --include=dev --no-audit --no-fund \
  && npm run build \
  && npm prune --omit=dev --ignore-scripts --no-audit --no-fund \
  && mkdir -p apps/api/node_modules packages/schema/node_modules

FROM node:22.23.3-bookworm-slim
ENV NODE_ENV=production
WORKDIR /srv/cornerway
COPY --from=build /srv/cornerway/package.json ./
COPY --from=build /srv/cornerway/node_modules ./node_modules
COPY --from=build /srv/cornerway/prisma/migrations ./prisma/migrations
COPY --from=build /srv/cornerway/packages/schema/package.json ./packages/schema/package.json
COPY --from=build /srv/cornerway/packages/schema/node_modules ./packages/schema/node_modules
COPY --from=build /srv/cornerway/packages/schema/dist ./packages/schema/dist
COPY --from=build /srv/cornerway/packages/engine/package.json ./packages/engine/package.json
COPY --from=build /srv/cornerway/packages/engine/dist ./packages/engine/dist
COPY --from=build /srv/cornerway/apps/api/package.json ./apps/api/package.json
COPY --from=build /srv/cornerway/apps/api/node_modules ./apps/api/node_modules
COPY --from=build /srv/cornerway/apps/api/start ./apps/api/start
COPY --from=build /srv/cornerway/apps/api/dist ./apps/api/dist
COPY --from=build /srv/cornerway/apps/web/dist ./apps/web/dist
# The verification manual, which permit sets print.
COPY --from=build /srv/cornerway/shared/verification ./shared/verification
RUN mkdir -m 700 /var/lib/cornerway && chown node:node /var/lib/cornerway
USER node
EXPOSE 3000
CMD ["node", "apps/api/dist/server.js"]
