-- CreateIndex
CREATE INDEX "listed_packs_price_currency_idx" ON "listed_packs"("price_currency");

-- CreateIndex
CREATE INDEX "packs_price_currency_idx" ON "packs"("price_currency");
