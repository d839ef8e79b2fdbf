"""A program on a terminal of its own, as a person would have it."""

import os
import pty
import re
import select
import subprocess
import time

CONTROL = re.compile(r"\x1b\[[0-9;?]*[A-Za-z]")


class Terminal:
    """Runs a command whose standard streams, as far as they are not given, are a new terminal."""

    def __init__(self, command, environment=None, plain=False, **streams):
        self.master, slave = pty.openpty()
        given = {"stdin": slave, "stdout": slave, "stderr": slave} | streams
        variables = os.environ | {"TERM": "xterm"} | (environment or {})
        self.process = subprocess.Popen(command, env=variables, start_new_session=True, **given)
        os.close(slave)
        self.plain = plain  # without what moves the cursor and colours
        self.shown = ""

    def type(self, text):
        os.write(self.master, text.encode())

    def _read(self, seconds):
        """False where nothing comes any more."""
        ready, _, _ = select.select([self.master], [], [], seconds)
        if not ready:
            return True
        try:
            piece = os.read(self.master, 65536)
        except OSError:  # every other end is closed
            return False
        self.shown += piece.decode(errors="replace")
        if self.plain:
            self.shown = CONTROL.sub("", self.shown)
        return bool(piece)

    def wait_for(self, pattern, seconds=20.0):
        """Whether what is shown from now on comes to match; it is taken out of what is shown."""
        until = time.monotonic() + seconds
        while not (found := re.search(pattern, self.shown, re.DOTALL)):
            if time.monotonic() > until or not self._read(0.1):
                found = re.search(pattern, self.shown, re.DOTALL)
                break
        if found:
            self.shown = self.shown[found.end() :]
        return bool(found)

    def end(self):
        """All that is shown until the program ends, and its status."""
        while self._read(0.1) and self.process.poll() is None:
            pass
        while select.select([self.master], [], [], 0)[0] and self._read(0):
            pass
        status = self.process.wait()
        os.close(self.master)
        return self.shown, status
