"""Drives Debian's Chromium over its debugging pipe; the standard library only."""

import base64
import itertools
import json
import os
import shutil
import subprocess
import tempfile


class Browser:
    """One headless browser with one page. Use it with `with`."""

    def __enter__(self):
        program = shutil.which("chromium") or shutil.which("chromium-browser")
        if program is None:
            raise SystemExit("chromium is not installed; .ci/packages lists it")
        self.profile = tempfile.TemporaryDirectory(ignore_cleanup_errors=True)
        to_read, self.to_browser = os.pipe()
        self.from_browser, to_write = os.pipe()
        options = [
            "--headless=new", "--remote-debugging-pipe", "--no-sandbox", "--disable-gpu",
            "--disable-dev-shm-usage", "--no-first-run", "--hide-scrollbars",
            "--user-data-dir=" + self.profile.name,
        ]
        # The browser reads from descriptor 3 and writes to descriptor 4.
        self.process = subprocess.Popen(
            ["sh", "-c", f'exec "$@" 3<&{to_read} 4>&{to_write}', "sh", program, *options, "about:blank"],
            pass_fds=(to_read, to_write), stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        os.close(to_read)
        os.close(to_write)
        self.numbers = itertools.count(1)
        self.rest = b""
        self.complaints = []
        targets = self.call("Target.getTargets")["targetInfos"]
        page = next(target for target in targets if target["type"] == "page")
        self.session = self.call(
            "Target.attachToTarget", targetId=page["targetId"], flatten=True)["sessionId"]
        for domain in ("Page", "Runtime", "Log"):
            self.call(domain + ".enable")
        return self

    def __exit__(self, *_):
        self.process.kill()
        self.process.wait()
        os.close(self.to_browser)
        os.close(self.from_browser)
        self.profile.cleanup()

    session = None

    def read(self):
        while b"\0" not in self.rest:
            more = os.read(self.from_browser, 1 << 20)
            if not more:
                raise SystemExit("the browser has gone")
            self.rest += more
        message, self.rest = self.rest.split(b"\0", 1)
        message = json.loads(message)
        self.note(message)
        return message

    def note(self, message):
        """Keeps what the page complains of."""
        method, given = message.get("method"), message.get("params", {})
        if method == "Runtime.exceptionThrown":
            self.complaints.append(given["exceptionDetails"]["text"])
        elif method == "Log.entryAdded" and given["entry"]["level"] == "error":
            self.complaints.append(given["entry"]["text"])
        elif method == "Runtime.consoleAPICalled" and given["type"] == "error":
            self.complaints.append(str(given["args"]))

    def call(self, method, **given):
        number = next(self.numbers)
        message = {"id": number, "method": method, "params": given}
        if self.session:
            message["sessionId"] = self.session
        os.write(self.to_browser, json.dumps(message).encode() + b"\0")
        while True:
            answer = self.read()
            if answer.get("id") == number:
                if "error" in answer:
                    raise SystemExit(f"{method}: {answer['error']}")
                return answer["result"]

    def open(self, path, width):
        """Loads the file at that width; gives what it complains of."""
        self.complaints = []
        self.call("Emulation.setDeviceMetricsOverride", width=width, height=1000,
                  deviceScaleFactor=1, mobile=False)
        self.call("Page.navigate", url="file://" + os.path.abspath(path))
        while self.read().get("method") != "Page.loadEventFired":
            pass
        return self.complaints

    def run(self, script):
        """The value of a script's expression."""
        answer = self.call("Runtime.evaluate", expression=script, returnByValue=True)
        if "exceptionDetails" in answer:
            raise SystemExit(str(answer["exceptionDetails"]))
        return answer["result"].get("value")

    def print(self, path, width_in, height_in):
        """Prints to a PDF on paper of that size; the sheet's own margins hold."""
        answer = self.call("Page.printToPDF", paperWidth=width_in, paperHeight=height_in,
                           printBackground=True, preferCSSPageSize=False)
        with open(path, "wb") as file:
            file.write(base64.b64decode(answer["data"]))
