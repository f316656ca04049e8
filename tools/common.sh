# Shared by ./loomproof and ./check; plain POSIX shell. Expects $home: the folder of the repository.

words="$home/workshop/src/main/resources/org/loomproof/workshop/words"

# message KEY [ARGUMENT...]: the sentence in the reader's language, English where that language is silent.
message() {
    key=$1
    shift
    language=${LC_ALL:-${LC_MESSAGES:-${LANG:-en}}}
    text=
    for file in "$words/${language%%[_.@]*}.properties" "$words/en/launcher.properties"; do
        if [ -z "$text" ] && [ -f "$file" ]; then
            text=$(sed -n "s/^$key *= *//p" "$file")
        fi
    done
    hole=0
    for argument; do
        case $text in
            *"{$hole}"*) text="${text%%"{$hole}"*}$argument${text#*"{$hole}"}" ;;
        esac
        hole=$((hole + 1))
    done
    printf '%s\n' "${text:-$key $*}"
}

# Progress goes to the error stream, so that what a command prints stays clean.
say() {
    message "$@" >&2
}

give_up() {
    say "$@"
    exit 1
}

# jdk_version FOLDER: sets $version to 21, 25, ...; empty when there is no JDK in the folder. Starts no process when the
# folder states its own version, as all JDKs of today do.
jdk_version() {
    version=
    [ -x "$1/bin/java" ] && [ -x "$1/bin/javac" ] || return 0
    if [ -f "$1/release" ]; then
        while IFS= read -r line; do
            case $line in
                JAVA_VERSION=*) version=${line#JAVA_VERSION=\"} ;;
            esac
        done <"$1/release"
    fi
    if [ -z "$version" ]; then
        version=$("$1/bin/java" -XshowSettings:properties -version 2>&1 | sed -n 's/^ *java.specification.version = //p')
    fi
    version=${version#1.}
    version=${version%%[!0-9]*}
}

# folder_of_java_on_path: where the java of PATH really lives, through its links.
folder_of_java_on_path() {
    java=$(command -v java) || return 0
    while [ -L "$java" ]; do
        link=$(readlink "$java")
        case $link in
            /*) java=$link ;;
            *) java=${java%/*}/$link ;;
        esac
    done
    printf '%s\n' "${java%/bin/java}"
}

# find_jdk: sets $jdk and $version to the first JDK 21 or newer of LOOMPROOF_JAVA_HOME, JAVA_HOME, the PATH; else to the
# newest in the folders where JDKs are usually put, or in the one folder named by LOOMPROOF_JDK_FOLDER.
find_jdk() {
    jdk=
    oldest_wanted=21
    newest_seen=
    if [ -n "${LOOMPROOF_JAVA_HOME:-}" ]; then
        jdk_version "$LOOMPROOF_JAVA_HOME"
        [ "${version:-0}" -ge $oldest_wanted ] || give_up launcher.chosen-jdk-unfit "$LOOMPROOF_JAVA_HOME"
        jdk=$LOOMPROOF_JAVA_HOME
        return 0
    fi
    if [ -n "${JAVA_HOME:-}" ]; then
        jdk_version "$JAVA_HOME"
        if [ "${version:-0}" -ge $oldest_wanted ]; then
            jdk=$JAVA_HOME
            return 0
        fi
        newest_seen=$version
    fi
    on_path=$(folder_of_java_on_path)
    if [ -n "${LOOMPROOF_JDK_FOLDER:-}" ]; then
        set -- "$LOOMPROOF_JDK_FOLDER"/*
    else
        set -- /usr/lib/jvm/* /usr/lib64/jvm/* /usr/java/* /usr/local/openjdk* /opt/* /opt/*/* \
            "$HOME"/.sdkman/candidates/java/* "$HOME"/.jdks/* "$HOME"/.jdks/*/Contents/Home \
            /Library/Java/JavaVirtualMachines/*/Contents/Home "$HOME"/Library/Java/JavaVirtualMachines/*/Contents/Home
    fi
    best=0
    for candidate in "$on_path" "$@"; do
        jdk_version "$candidate"
        if [ "${version:-0}" -gt "$best" ]; then
            best=$version
            jdk=$candidate
        fi
        if [ "$candidate" = "$on_path" ] && [ "$best" -ge $oldest_wanted ]; then
            break
        fi
    done
    if [ "$best" -lt $oldest_wanted ] && [ -z "${LOOMPROOF_JDK_FOLDER:-}" ] && [ -x /usr/libexec/java_home ]; then
        jdk=$(/usr/libexec/java_home -v "$oldest_wanted+" 2>/dev/null || true)
        jdk_version "$jdk"
        best=${version:-$best}
    fi
    version=$best
    if [ "$best" -lt $oldest_wanted ]; then
        [ "$best" -gt 0 ] && newest_seen=$best
        if [ -n "$newest_seen" ]; then
            give_up launcher.jdk-too-old "$newest_seen"
        fi
        give_up launcher.no-jdk
    fi
}

need_maven() {
    command -v mvn >/dev/null 2>&1 || give_up launcher.no-maven
}
