#!/bin/sh
# Installs what is missing, builds the page and serves it on this machine. Stop it with Ctrl-C.
# PORT=8080 sh web/serve.sh picks another port.
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/web/setup.sh"

sh "$root/web/build.sh"
need_node

cd "$root/web"
exec node --input-type=module -e '
  import { preview } from "vite";
  const port = Number(process.argv[1]);
  const page = { host: "127.0.0.1", port, strictPort: true, open: false };
  await preview({ preview: page, logLevel: "warn" }).catch((reason) => {
    console.error(`treadwater: could not serve on port ${port} (${reason.message}); ` +
      "another port: PORT=8080 sh web/serve.sh");
    process.exit(1);
  });
  console.log(`Treadwater is ready at http://localhost:${port}/ (Ctrl-C stops it)`);
' "${PORT:-4173}"
