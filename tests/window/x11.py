"""Calls of Xlib for the runs: closes a window as a window manager does, because the
tests' screen has none, and reads the picture of the whole screen."""

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


class Image(ctypes.Structure):
    """The beginning of Xlib's XImage."""

    _fields_ = [
        ("width", ctypes.c_int), ("height", ctypes.c_int), ("xoffset", ctypes.c_int),
        ("format", ctypes.c_int), ("data", ctypes.c_void_p), ("byte_order", ctypes.c_int),
        ("bitmap_unit", ctypes.c_int), ("bitmap_bit_order", ctypes.c_int),
        ("bitmap_pad", ctypes.c_int), ("depth", ctypes.c_int), ("bytes_per_line", ctypes.c_int),
    ]


CLIENT_MESSAGE = 33
ALL_PLANES = ctypes.c_ulong(-1)
Z_PIXMAP = 2


def xlib():
    x = ctypes.CDLL("libX11.so.6")
    x.XOpenDisplay.restype = ctypes.c_void_p
    x.XDefaultRootWindow.restype = ctypes.c_ulong
    x.XInternAtom.restype = ctypes.c_ulong
    x.XGetImage.restype = ctypes.POINTER(Image)
    return x


def screen():
    """Every pixel of the screen, as bytes to compare."""
    x = xlib()
    display = ctypes.c_void_p(x.XOpenDisplay(None))
    root = ctypes.c_ulong(x.XDefaultRootWindow(display))
    width, height = x.XDisplayWidth(display, 0), x.XDisplayHeight(display, 0)
    image = x.XGetImage(display, root, 0, 0, width, height, ALL_PLANES, Z_PIXMAP)
    pixels = ctypes.string_at(image.contents.data, image.contents.bytes_per_line * height)
    x.XDestroyImage(image)
    x.XCloseDisplay(display)
    return pixels


def close_windows(title):
    """Asks every window of that title to close; returns how many there were."""
    x = xlib()
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
