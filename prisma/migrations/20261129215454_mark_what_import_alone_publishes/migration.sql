-- What is there already is from before 0.2.0, when the scope IMPORT alone published through feeds: it is marked, and what comes is not.

-- AlterTable
ALTER TABLE "access_tokens" ADD COLUMN     "import_publishes" BOOLEAN NOT NULL DEFAULT true;
ALTER TABLE "access_tokens" ALTER COLUMN "import_publishes" SET DEFAULT false;

-- AlterTable
ALTER TABLE "feeds" ADD COLUMN     "import_publishes" BOOLEAN NOT NULL DEFAULT true;
ALTER TABLE "feeds" ALTER COLUMN "import_publishes" SET DEFAULT false;
