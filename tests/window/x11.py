"""Closes a window as a person does: by the window manager's message. (There is
no window manager on the tests' screen, so it is sent from here, by Xlib.)"""

import ctypes


class ClientMessage(ctypes.Structure):
    """Xlib's XClientMessageEvent."""

    _fields_ = [
        ("type", ctypes.c_int), ("serial", ctypes.c_ulong), ("send_event", ctypes.c_int),
        ("display", ctypes.c_void_p), ("window", ctypes.c_ulong), ("message_type", ctypes.c_ulong),
        ("format", ctypes.c_int), ("data", ctypes.c_long * 5),
    ]


class Event(ctypes.Union):
    """Xlib's XEvent, which is as long as 24 longs."""

    _fields_ = [("message", ClientMessage), ("pad", ctypes.c_long * 24)]


CLIENT_MESSAGE = 33


def close_windows(title):
    """Asks every window of that title to close; gives how many there were."""
    x = ctypes.CDLL("libX11.so.6")
    x.XOpenDisplay.restype = ctypes.c_void_p
    x.XDefaultRootWindow.restype = ctypes.c_ulong
    x.XInternAtom.restype = ctypes.c_ulong
    display = ctypes.c_void_p(x.XOpenDisplay(None))
    protocols = x.XInternAtom(display, b"WM_PROTOCOLS", 0)
    delete = x.XInternAtom(display, b"WM_DELETE_WINDOW", 0)
    closed = 0
    for window in windows(x, display, x.XDefaultRootWindow(display)):
        if title_of(x, display, window) == title:
            event = Event()
            event.message.type = CLIENT_MESSAGE
            event.message.window = window
            event.message.message_type = protocols
            event.message.format = 32
            event.message.data[0] = delete
            x.XSendEvent(display, ctypes.c_ulong(window), 0, ctypes.c_long(0), ctypes.byref(event))
            closed += 1
    x.XCloseDisplay(display)
    return closed


def windows(x, display, root):
    parent, children, count = ctypes.c_ulong(), ctypes.POINTER(ctypes.c_ulong)(), ctypes.c_uint()
    x.XQueryTree(display, ctypes.c_ulong(root), ctypes.byref(ctypes.c_ulong()),
                 ctypes.byref(parent), ctypes.byref(children), ctypes.byref(count))
    found = [children[i] for i in range(count.value)]
    if count.value:
        x.XFree(children)
    return found


def title_of(x, display, window):
    name = ctypes.c_char_p()
    if not x.XFetchName(display, ctypes.c_ulong(window), ctypes.byref(name)):
        return None
    return name.value.decode()
