# What Steening's scripts need from the machine, and how they get it. To be sourced by bash.
#
#   need_jdk              finds a Java Development Kit and sets JAVA_HOME
#   need_command A B PKG  is content with the command A or B, else brings the Debian package PKG
#
# Everything is said on standard error: standard output belongs to the program that is started.

OLDEST_JAVA=17

say() { printf 'steening: %s\n' "$*" >&2; }
stop() { say "$*"; exit 1; }

# The feature version of the Java in a folder, 0 if there is none. Its release file is read rather than the program
# asked, which would add a twentieth of a second to every command.
java_version() {
  local name value
  if [[ -x $1/bin/java && -r $1/release ]]; then
    while IFS='=' read -r name value; do
      [[ $name == JAVA_VERSION ]] || continue
      value=${value//\"/}
      value=${value#1.}
      echo "${value%%[.+-]*}"
      return
    done < "$1/release"
  fi
  echo 0
}

# Prints the first suitable folder: the one asked for, the one on the path, then whatever is installed.
find_java() {
  local with=$1 folder on_path
  on_path=$(command -v java || true)
  [[ -z $on_path ]] || on_path=$(dirname "$(dirname "$(readlink -f "$on_path")")")
  for folder in "${JAVA_HOME:-}" "$on_path" /usr/lib/jvm/*; do
    [[ -n $folder && -x $folder/bin/$with ]] || continue
    (($(java_version "$folder") >= OLDEST_JAVA)) || continue
    echo "$folder"
    return
  done
}

need_jdk() {
  local found
  found=$(find_java javac)
  if [[ -z $found ]]; then
    install_debian "a Java Development Kit ($OLDEST_JAVA or newer)" \
      "openjdk-$OLDEST_JAVA-jdk-headless" default-jdk-headless
    found=$(find_java javac)
    [[ -n $found ]] || stop "the Java Development Kit was installed but is not to be found; please set JAVA_HOME."
  fi
  export JAVA_HOME=$found
}

need_command() {
  local first=$1 second=$2 package=$3
  command -v "$first" > /dev/null || command -v "$second" > /dev/null || install_debian "$first" "$package"
}

known_to_debian() { apt-cache show "$1" > /dev/null 2>&1; }

# install_debian WHAT PACKAGE [OTHER PACKAGE]: the second package is for releases that no longer have the first.
install_debian() {
  local what=$1 package=$2 as_root=()
  if ! command -v apt-get > /dev/null; then
    stop "$what is missing. Please install it (on Debian and Ubuntu it is the package $package) and start again."
  fi
  if ((EUID != 0)); then
    # Without a terminal nobody could type a password, and sudo would wait or fail with a riddle.
    if command -v sudo > /dev/null && { [[ -t 0 && -t 2 ]] || sudo -n true 2> /dev/null; }; then
      as_root=(sudo)
    else
      stop "$what is missing. Bring it with: sudo apt-get install $package"
    fi
  fi
  say "$what is missing; installing it from Debian's packages (a minute or two) ..."
  local log
  log=$(mktemp)
  "${as_root[@]}" apt-get update > "$log" 2>&1 || true
  if [[ -n ${3:-} ]] && ! known_to_debian "$package" && known_to_debian "$3"; then package=$3; fi
  if ! "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive \
    apt-get install -y --no-install-recommends "$package" >> "$log" 2>&1; then
    tail -n 20 "$log" >&2
    stop "$package could not be installed; the lines above say why. The command was: apt-get install $package"
  fi
  rm -f "$log"
}
