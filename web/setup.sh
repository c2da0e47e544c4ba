# Shared by both commands: finding the tools they need, and installing the missing ones. Sourced by
# web/serve.sh, web/build.sh and tests/run.sh, which set $root to the repository first.

say() { printf '%s\n' "treadwater: $*"; }

die() {
  printf '%s\n' "treadwater: $*" >&2
  exit 1
}

have() { command -v "$1" >/dev/null 2>&1; }

# Runs a command as root: directly if we are root, otherwise through sudo, which may ask for a
# password only if somebody is there to type one.
as_root() {
  if [ "$(id -u)" -eq 0 ]; then
    "$@"
  elif [ -t 0 ]; then
    sudo "$@"
  else
    sudo -n "$@"
  fi
}

package_installed() {
  dpkg-query -W -f '${db:Status-Status}' "$1" 2>/dev/null | grep -qx installed
}

apt_get() {
  as_root env DEBIAN_FRONTEND=noninteractive apt-get -qq -o DPkg::Lock::Timeout=600 "$@" </dev/null
}

# need_packages NAME...: has apt install the missing ones.
need_packages() {
  missing=
  for package in "$@"; do
    package_installed "$package" || missing="$missing $package"
  done
  [ -n "$missing" ] || return 0
  by_hand="as root, 'apt-get update && apt-get install$missing', then run this again"

  have apt-get || die "needs the programs that Debian packages as$missing, and this system has no apt; install them some other way, then run this again."
  if [ "$(id -u)" -ne 0 ]; then
    have sudo || die "needs Debian packages, and there is no sudo to install them with; run, $by_hand."
    say "installing needs root, so sudo may ask for your password"
  fi
  say "installing Debian packages:$missing"
  apt_get update || say "apt could not refresh all of its package lists; going on with what it knows"
  # shellcheck disable=SC2086 # a list of names
  apt_get install -y --no-install-recommends $missing >/dev/null ||
    die "apt could not install$missing; see its message above, check the network and free disk space, or run, $by_hand."
}

# Vite 8 asks for ^20.19 or >=22.12.
node_is_new_enough() {
  have node && node -e '
    const [major, minor] = process.versions.node.split(".").map(Number);
    process.exit((major === 20 && minor >= 19) || (major === 22 && minor >= 12) || major > 22 ? 0 : 1)'
}

# A Node new enough for the page's build, first in PATH, and npm. Debian 12's own Node is too old;
# then a newer one is installed as an npm package into a folder of this repository. Debian's npm
# looks for its parts in /usr/share/nodejs, which a Node from elsewhere must be told; so must
# Debian's emcc.
need_node() {
  export NODE_PATH=/usr/share/nodejs
  own_node="$root/.cache/node/node_modules/.bin"
  if [ -x "$own_node/node" ]; then
    PATH="$own_node:$PATH"
  fi
  have node || need_packages nodejs
  have npm || need_packages npm
  if ! node_is_new_enough; then
    say "Node $(node --version) is too old for the page's build: bringing Node 22 into .cache/node"
    case "$(uname -m)" in
      x86_64) arch=x64 ;;
      aarch64) arch=arm64 ;;
      *) die "needs Node 20.19 or newer, and npm has none for this machine ($(uname -m)); put one on PATH, then run this again." ;;
    esac
    npm install --silent --no-audit --no-fund --no-save --prefix "$root/.cache/node" "node-linux-$arch@22" ||
      die "could not bring Node 22 from the npm registry; check the network, or put Node 20.19 or newer on PATH, then run this again."
    PATH="$own_node:$PATH"
    node_is_new_enough || die "brought Node 22, but it does not run here; put Node 20.19 or newer on PATH, then run this again."
  fi
  export PATH
}

# need_modules FOLDER: installs a folder's npm packages, unless already done for this exact list.
need_modules() {
  stamp="$root/$1/node_modules/.treadwater-stamp"
  if [ -f "$stamp" ] && cat "$root/$1/package.json" "$root/$1/package-lock.json" | cmp -s - "$stamp"; then
    return 0
  fi
  say "installing npm packages in $1/"
  (cd "$root/$1" && PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD=1 npm ci --no-audit --no-fund --loglevel=error) ||
    die "npm could not install the packages of $1/; see its message above, check the network, then run this again."
  cat "$root/$1/package.json" "$root/$1/package-lock.json" >"$stamp"
}
