-- CreateTable
CREATE TABLE "preview_links" (
    "publisher_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "slug" TEXT NOT NULL,
    "secret_hash" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "created_by_token" TEXT,
    "created_by_program" TEXT,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "revoked_at" TIMESTAMPTZ(3),

    CONSTRAINT "preview_links_pkey" PRIMARY KEY ("publisher_id","id")
);

-- CreateIndex
CREATE INDEX "preview_links_publisher_id_created_at_id_idx" ON "preview_links"("publisher_id", "created_at" DESC, "id");

-- CreateIndex
CREATE UNIQUE INDEX "preview_links_publisher_id_secret_hash_key" ON "preview_links"("publisher_id", "secret_hash");

-- AddForeignKey
ALTER TABLE "preview_links" ADD CONSTRAINT "preview_links_publisher_id_fkey" FOREIGN KEY ("publisher_id") REFERENCES "publishers"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- What the schema language cannot say.
ALTER TABLE "preview_links"
  ADD CONSTRAINT "preview_links_one_maker" CHECK (num_nonnulls("created_by_token", "created_by_program") = 1);
