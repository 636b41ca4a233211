# Compiles the tests and sets java to the command that runs a class of them inside optimizer. Sourced, in the project's folder, by
# what ./test runs besides the tests.
. .ci/jdk.sh
need_jdk
need_maven
path=$(mktemp)
trap 'rm -f "$path"' EXIT
mvn -q -B -ntp -pl model,optimizer test-compile dependency:build-classpath -Dmdep.outputFile="$path" -Dmdep.includeScope=test
java=("$JAVA_HOME/bin/java" -XX:+UseSerialGC -XX:InlineSmallCode=1200 -cp "target/classes:target/test-classes:$(cat "$path")")
