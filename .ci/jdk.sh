# Finds a JDK 17 or newer and Maven, or says plainly what to install. Sourced by ./foamfront, ./test and .ci/bench.

# major version of the java in a home, 0 where there is none; from the home's own note, for starting a Java to ask it takes a
# tenth of a second
jdk_major() {
    local line=""
    [ -x "$1/bin/javac" ] || { echo 0; return; }
    [ ! -r "$1/release" ] || line=$(sed -n 's/^JAVA_VERSION="\([0-9]*\).*/\1/p' "$1/release")
    [ -n "$line" ] || line=$("$1/bin/java" -version 2>&1 | sed -n 's/.*version "\([0-9]*\).*/\1/p' | head -n 1)
    echo "${line:-0}"
}

jdk_candidates() {
    local javac
    [ -z "${JAVA_HOME:-}" ] || echo "$JAVA_HOME"
    if javac=$(command -v javac); then
        javac=$(readlink -f "$javac")
        echo "${javac%/bin/javac}"
    fi
    ls -d /usr/lib/jvm/*/ /Library/Java/JavaVirtualMachines/*/Contents/Home/ 2>/dev/null | sed 's#/$##' || true
}

# sets JAVA_HOME to the first JDK 17 or newer and major to its version
need_jdk() {
    local home
    while read -r home; do
        major=$(jdk_major "$home")
        if [ "$major" -ge 17 ]; then
            export JAVA_HOME="$home"
            return
        fi
    done < <(jdk_candidates)
    echo "foamfront needs a Java development kit, version 17 or newer, and found none." >&2
    echo "Install one (Debian, Ubuntu: apt-get install openjdk-17-jdk; others: any OpenJDK build) or set JAVA_HOME." >&2
    exit 2
}

# the newest JDK on this machine
newest_jdk() {
    local home major best=0 found=""
    while read -r home; do
        major=$(jdk_major "$home")
        if [ "$major" -gt "$best" ]; then best=$major found=$home; fi
    done < <(jdk_candidates)
    echo "$found"
}

need_maven() {
    command -v mvn >/dev/null && return
    echo "foamfront builds with Apache Maven 3.8 or newer and found no mvn on the PATH." >&2
    echo "Install it (Debian, Ubuntu: apt-get install maven) and run the same command again." >&2
    exit 2
}
