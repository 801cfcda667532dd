package tideover.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.postgresql.ds.PGSimpleDataSource;

/** A real PostgreSQL, started for these tests on a free port of this machine and gone with them. */
final class Postgres {
    private static final Postgres STARTED = new Postgres();

    private final Path programs = programs();
    private final Path folder;
    private final int port;
    private int databases;

    private Postgres() {
        try {
            folder = Files.createTempDirectory("td-pg");
            if (isRoot()) run(List.of("chown", "postgres", folder.toString()));
            try (ServerSocket free = new ServerSocket(0)) {
                port = free.getLocalPort();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        Runtime.getRuntime().addShutdownHook(new Thread(this::stop));
        String data = folder.resolve("data").toString();
        asServer("initdb", "-D", data, "-U", "admin", "-A", "trust", "-E", "UTF8", "--locale=C.UTF-8", "--no-sync");
        String options = "-p %d -c listen_addresses=127.0.0.1 -c unix_socket_directories=%s -c fsync=off"
                .formatted(port, folder);
        asServer("pg_ctl", "-D", data, "-w", "-l", folder.resolve("log").toString(), "-o", options, "start");
    }

    /** An empty database. */
    static DataSource fresh() {
        return STARTED.create();
    }

    private synchronized DataSource create() {
        String name = "test" + ++databases;
        try (Connection connection = source("postgres").getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("CREATE DATABASE " + name);
        } catch (SQLException e) {
            throw new AssertionError(e);
        }
        return source(name);
    }

    private DataSource source(String database) {
        PGSimpleDataSource source = new PGSimpleDataSource();
        source.setUrl("jdbc:postgresql://127.0.0.1:%d/%s".formatted(port, database));
        source.setUser("admin");
        return source;
    }

    private void stop() {
        asServer("pg_ctl", "-D", folder.resolve("data").toString(), "-m", "immediate", "stop");
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) Files.delete(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The server refuses to run as root. */
    private void asServer(String program, String... arguments) {
        List<String> command = new ArrayList<>();
        if (isRoot()) command.addAll(List.of("runuser", "-u", "postgres", "--"));
        command.add(programs.resolve(program).toString());
        command.addAll(List.of(arguments));
        run(command);
    }

    private void run(List<String> command) {
        Path log = Path.of(folder + ".log");
        try {
            Process process = new ProcessBuilder(command)
                    .directory(folder.toFile())
                    .redirectErrorStream(true)
                    .redirectOutput(log.toFile())
                    .start();
            boolean ended = process.waitFor(60, TimeUnit.SECONDS);
            if (!ended || process.exitValue() != 0) throw new AssertionError(command + ": " + Files.readString(log));
            Files.delete(log);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    private static boolean isRoot() {
        return System.getProperty("user.name").equals("root");
    }

    /** Where the newest one installed keeps its programs; Debian does not put all of them on the path. */
    private static Path programs() {
        List<Path> places = new ArrayList<>();
        Path versions = Path.of("/usr/lib/postgresql");
        if (Files.isDirectory(versions)) {
            try (Stream<Path> found = Files.list(versions)) {
                found.sorted(Comparator.comparing((Path version) ->
                                        Double.valueOf(version.getFileName().toString()))
                                .reversed())
                        .forEach(version -> places.add(version.resolve("bin")));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        for (String place : System.getenv("PATH").split(":")) places.add(Path.of(place));
        return places.stream()
                .filter(place -> Files.isExecutable(place.resolve("initdb")))
                .findFirst()
                .orElseThrow(() -> new AssertionError("these tests need PostgreSQL: install the package postgresql"));
    }
}
