package tideover.web.trial;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** Requests letter by letter, with headers that no decent client lets anybody set. */
public final class RawHttp {
    private RawHttp() {}

    /**
     * What was answered.
     *
     * @param headers by name in small letters
     */
    public record Reply(int status, Map<String, List<String>> headers, String body) {
        /** All values of a header, joined; empty where it is missing. */
        public String header(String name) {
            return String.join(", ", headers.getOrDefault(name.toLowerCase(Locale.ROOT), List.of()));
        }
    }

    /**
     * Sends a request and reads what comes.
     *
     * @param lines request line and headers; with {@code Connection: close} added
     */
    public static Reply send(int port, String body, String... lines) {
        StringBuilder request = new StringBuilder();
        for (String line : lines) request.append(line).append("\r\n");
        request.append("Connection: close\r\n");
        if (!body.isEmpty())
            request.append("Content-Length: ")
                    .append(body.getBytes(StandardCharsets.UTF_8).length)
                    .append("\r\n");
        request.append("\r\n").append(body);
        try (Socket socket = new Socket("127.0.0.1", port)) {
            socket.setSoTimeout(30_000);
            socket.getOutputStream().write(request.toString().getBytes(StandardCharsets.UTF_8));
            return reply(new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Reply reply(String text) {
        int end = text.indexOf("\r\n\r\n");
        if (end < 0) throw new AssertionError("no answer but: " + text);
        String[] head = text.substring(0, end).split("\r\n");
        Map<String, List<String>> headers = new TreeMap<>();
        for (int i = 1; i < head.length; i++) {
            int colon = head[i].indexOf(':');
            headers.computeIfAbsent(head[i].substring(0, colon).toLowerCase(Locale.ROOT), name -> new ArrayList<>())
                    .add(head[i].substring(colon + 1).strip());
        }
        String body = text.substring(end + 4);
        boolean inPieces = headers.getOrDefault("transfer-encoding", List.of()).contains("chunked");
        return new Reply(Integer.parseInt(head[0].split(" ")[1]), headers, inPieces ? joined(body) : body);
    }

    private static String joined(String body) {
        byte[] rest = body.getBytes(StandardCharsets.UTF_8);
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        int at = 0;
        while (at < rest.length) {
            int end = at;
            while (rest[end] != '\r') end++;
            int size = Integer.parseInt(new String(rest, at, end - at, StandardCharsets.US_ASCII), 16);
            whole.write(rest, end + 2, size);
            at = end + 2 + size + 2;
        }
        return whole.toString(StandardCharsets.UTF_8);
    }
}
