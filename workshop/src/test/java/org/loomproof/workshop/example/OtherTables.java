package org.loomproof.workshop.example;

import java.io.Closeable;
import java.io.File;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** The classes under test loaded once more, with data files that stand before the usual ones. */
final class OtherTables implements Closeable {

    private final URLClassLoader loader;

    /** @param folder where replaced files lie, each under the path of its resource */
    OtherTables(Path folder) {
        List<URL> places = new ArrayList<>();
        places.add(url(folder));
        Arrays.stream(System.getProperty("java.class.path").split(File.pathSeparator, -1))
                .map(Path::of)
                .forEach(place -> places.add(url(place)));
        loader = new URLClassLoader(places.toArray(URL[]::new), ClassLoader.getPlatformClassLoader());
    }

    private static URL url(Path place) {
        try {
            return place.toUri().toURL();
        } catch (MalformedURLException e) {
            throw new IllegalStateException(e);
        }
    }

    List<String> verdicts(String planFile) {
        return ask("verdicts", planFile);
    }

    List<String> ceilings() {
        return ask("ceilings");
    }

    private List<String> ask(String what, Object... given) {
        Class<?>[] types = Arrays.stream(given).map(Object::getClass).toArray(Class[]::new);
        try {
            Object answer = loader.loadClass(VerdictList.class.getName())
                    .getMethod(what, types)
                    .invoke(null, given);
            return ((List<?>) answer).stream().map(String.class::cast).toList();
        } catch (ReflectiveOperationException e) {
            Throwable cause = e instanceof InvocationTargetException thrown ? thrown.getTargetException() : e;
            throw new AssertionError(what + " of the other tables", cause);
        }
    }

    @Override
    public void close() throws IOException {
        loader.close();
    }
}
