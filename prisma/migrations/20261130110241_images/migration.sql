-- CreateEnum
CREATE TYPE "KeptImageFormat" AS ENUM ('JPEG', 'PNG', 'WEBP', 'AVIF');

-- AlterTable
ALTER TABLE "component_drafts" ADD COLUMN     "image" JSONB;

-- AlterTable
ALTER TABLE "draft_meals" ADD COLUMN     "image" JSONB;

-- AlterTable
ALTER TABLE "plan_drafts" ADD COLUMN     "image" JSONB,
ADD COLUMN     "licence" TEXT;

-- AlterTable
ALTER TABLE "publishers" ADD COLUMN     "image" JSONB;

-- CreateTable
CREATE TABLE "images" (
    "publisher_id" UUID NOT NULL,
    "hash" TEXT NOT NULL,
    "file_hash" TEXT NOT NULL,
    "format" "KeptImageFormat" NOT NULL,
    "width" INTEGER NOT NULL,
    "height" INTEGER NOT NULL,
    "placeholder" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "created_by" TEXT NOT NULL,
    "removed_at" TIMESTAMPTZ(3),

    CONSTRAINT "images_pkey" PRIMARY KEY ("publisher_id","hash")
);

-- CreateTable
CREATE TABLE "image_names" (
    "publisher_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "hash" TEXT NOT NULL,
    "updated_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "image_names_pkey" PRIMARY KEY ("publisher_id","name")
);

-- CreateTable
CREATE TABLE "image_files" (
    "publisher_id" UUID NOT NULL,
    "hash" TEXT NOT NULL,
    "width" INTEGER NOT NULL,
    "format" "KeptImageFormat" NOT NULL,
    "sha256" TEXT NOT NULL,
    "size" INTEGER NOT NULL,

    CONSTRAINT "image_files_pkey" PRIMARY KEY ("publisher_id","hash","width","format")
);

-- CreateTable
CREATE TABLE "image_pieces" (
    "publisher_id" UUID NOT NULL,
    "hash" TEXT NOT NULL,
    "width" INTEGER NOT NULL,
    "format" "KeptImageFormat" NOT NULL,
    "position" INTEGER NOT NULL,
    "bytes" BYTEA NOT NULL,

    CONSTRAINT "image_pieces_pkey" PRIMARY KEY ("publisher_id","hash","width","format","position")
);

-- CreateIndex
CREATE INDEX "images_publisher_id_file_hash_idx" ON "images"("publisher_id", "file_hash");

-- CreateIndex
CREATE INDEX "images_publisher_id_created_at_hash_idx" ON "images"("publisher_id", "created_at" DESC, "hash");

-- CreateIndex
CREATE INDEX "image_names_publisher_id_hash_idx" ON "image_names"("publisher_id", "hash");

-- AddForeignKey
ALTER TABLE "images" ADD CONSTRAINT "images_publisher_id_fkey" FOREIGN KEY ("publisher_id") REFERENCES "publishers"("id") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "image_names" ADD CONSTRAINT "image_names_publisher_id_hash_fkey" FOREIGN KEY ("publisher_id", "hash") REFERENCES "images"("publisher_id", "hash") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "image_files" ADD CONSTRAINT "image_files_publisher_id_hash_fkey" FOREIGN KEY ("publisher_id", "hash") REFERENCES "images"("publisher_id", "hash") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- AddForeignKey
ALTER TABLE "image_pieces" ADD CONSTRAINT "image_pieces_publisher_id_hash_width_format_fkey" FOREIGN KEY ("publisher_id", "hash", "width", "format") REFERENCES "image_files"("publisher_id", "hash", "width", "format") ON DELETE NO ACTION ON UPDATE NO ACTION;

-- Whoever shows a picture is told when it is removed, as of all else that is said of a publisher.
CREATE TRIGGER "images_tell" AFTER UPDATE ON "images"
  FOR EACH STATEMENT EXECUTE FUNCTION "tell_of_change"('publishers');
