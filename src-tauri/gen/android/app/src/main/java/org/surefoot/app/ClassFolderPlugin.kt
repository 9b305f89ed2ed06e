package org.surefoot.app

import android.app.Activity
import android.content.Intent
import android.content.UriPermission
import android.database.Cursor
import android.net.Uri
import android.os.CancellationSignal
import android.os.OperationCanceledException
import android.provider.DocumentsContract
import android.provider.DocumentsContract.Document
import android.system.ErrnoException
import android.system.Os
import android.system.OsConstants
import androidx.activity.result.ActivityResult
import androidx.appcompat.app.AppCompatActivity
import app.tauri.annotation.ActivityCallback
import app.tauri.annotation.Command
import app.tauri.annotation.InvokeArg
import app.tauri.annotation.TauriPlugin
import app.tauri.plugin.Invoke
import app.tauri.plugin.JSObject
import app.tauri.plugin.Plugin
import java.io.FileInputStream
import java.io.FileNotFoundException
import java.io.FileOutputStream
import java.io.IOException
import java.util.concurrent.Callable
import java.util.concurrent.CopyOnWriteArraySet
import java.util.concurrent.Executors
import java.util.concurrent.TimeUnit
import java.util.concurrent.TimeoutException

/** What a command is given; each uses some of it. */
@InvokeArg
class ClassFolderArgs {
  /** The address of a tree. */
  var tree: String = ""
  /** What its provider calls a document in it. */
  var document: String = ""
  var name: String = ""
  /** A private file: what is written, or the place for what is read. */
  var file: String = ""
  /** The most bytes, or the most documents. */
  var most: Long = 0
  var extensions: List<String> = emptyList()
  var names: List<String> = emptyList()
  var prefix: String? = null
  /** Trees whose right is kept. */
  var used: List<String> = emptyList()
}

/** The right to use a tree is gone. */
private class NotAllowed : Exception()

/**
 * Passes the requests of `class_folder_android.rs` on to the provider of a document. Knows nothing
 * of class folders.
 *
 * Every request runs in a thread of its own, because a provider may wait for a network. What goes
 * back is ASCII: the bridge ends the program at signs that Java writes otherwise than UTF-8, and
 * names are given by anybody. So names are percent-encoded, and a fault is one word.
 */
@TauriPlugin
class ClassFolderPlugin(private val activity: Activity) : Plugin(activity) {
  private val resolver get() = activity.contentResolver
  private val signals = CopyOnWriteArraySet<CancellationSignal>()
  private val threads = Executors.newCachedThreadPool(::thread)
  private val clock = Executors.newSingleThreadScheduledExecutor(::thread)

  /** Lets the person choose a folder, and keeps the right to use it. */
  @Command
  fun pickFolder(invoke: Invoke) {
    val intent = Intent(Intent.ACTION_OPEN_DOCUMENT_TREE)
    intent.addFlags(READ_WRITE or Intent.FLAG_GRANT_PERSISTABLE_URI_PERMISSION)
    try {
      startActivityForResult(invoke, intent, "folderPicked")
    } catch (e: Exception) {
      invoke.reject("other", "other")
    }
  }

  @ActivityCallback
  fun folderPicked(invoke: Invoke, result: ActivityResult) {
    val picked = result.data
    val tree = picked?.data
    if (result.resultCode != Activity.RESULT_OK || picked == null || tree == null) {
      invoke.resolve(JSObject())
      return
    }
    answer(invoke) { _, _ ->
      // Other programs can answer in the place of the system's chooser.
      if (tree.scheme != "content" || !DocumentsContract.isTreeUri(tree)) throw NotAllowed()
      try {
        resolver.takePersistableUriPermission(tree, picked.flags and READ_WRITE)
      } catch (e: SecurityException) {
        throw NotAllowed()
      }
      right(tree)
      JSObject().put("tree", Uri.encode(tree.toString())).put("name", Uri.encode(nameOf(tree)))
    }
  }

  /** Gives back the right to every tree that is not used. */
  @Command
  fun releaseFolders(invoke: Invoke) =
    answer(invoke) { args, _ ->
      for (kept in resolver.persistedUriPermissions) {
        if (!DocumentsContract.isTreeUri(kept.uri) || kept.uri.toString() in args.used) continue
        var flags = if (kept.isReadPermission) Intent.FLAG_GRANT_READ_URI_PERMISSION else 0
        if (kept.isWritePermission) flags = flags or Intent.FLAG_GRANT_WRITE_URI_PERMISSION
        resolver.releasePersistableUriPermission(kept.uri, flags)
      }
      JSObject()
    }

  /** Lists the documents of a folder that are asked for, by one query. */
  @Command
  fun listFolder(invoke: Invoke) =
    answer(invoke) { args, signal ->
      val tree = Uri.parse(args.tree)
      right(tree)
      val folder = DocumentsContract.getTreeDocumentId(tree)
      val children = DocumentsContract.buildChildDocumentsUriUsingTree(tree, folder)
      var found: JSObject? = null
      for (look in 1..MOST_LOOKS) {
        found = query(children, signal) { if (isWhole(it)) rows(it, args) else null }
        if (found != null) break
        // It shows what it has, and loads the rest from a network.
        Thread.sleep(PAUSE_MILLIS)
      }
      found ?: throw TimeoutException()
    }

  /** Says the name of a file that was picked or opened. */
  @Command
  fun nameDocument(invoke: Invoke) =
    answer(invoke) { args, signal ->
      val file = Uri.parse(args.document)
      val cursor = resolver.query(file, arrayOf(Document.COLUMN_DISPLAY_NAME), null, null, null, signal)
      val name = cursor?.use { if (it.moveToFirst()) text(it, Document.COLUMN_DISPLAY_NAME) else null }
      JSObject().put("name", Uri.encode((name ?: "").take(MOST_NAME)))
    }

  /** Copies a document into a private file, at most so many bytes. */
  @Command
  fun readDocument(invoke: Invoke) =
    answer(invoke) { args, signal ->
      right(Uri.parse(args.tree))
      val opened = resolver.openFileDescriptor(documentOf(args), "r", signal)
      (opened ?: throw FileNotFoundException()).use { from ->
        FileInputStream(from.fileDescriptor).use { input ->
          FileOutputStream(args.file).use { output ->
            val part = ByteArray(PART_BYTES)
            var left = args.most
            while (left > 0) {
              signal.throwIfCanceled()
              val count = input.read(part, 0, minOf(left, part.size.toLong()).toInt())
              if (count < 0) break
              output.write(part, 0, count)
              left -= count
            }
          }
        }
      }
      JSObject()
    }

  /** Makes an empty document in the folder. */
  @Command
  fun createDocument(invoke: Invoke) =
    answer(invoke) { args, signal ->
      val tree = Uri.parse(args.tree)
      rightToWrite(tree)
      val folder = DocumentsContract.getTreeDocumentId(tree)
      val parent = DocumentsContract.buildDocumentUriUsingTree(tree, folder)
      // Of a kind that asks for no ending of its own.
      val made =
        DocumentsContract.createDocument(resolver, parent, "application/octet-stream", args.name)
      described(made ?: throw IOException(), signal)
    }

  /** Copies a private file into an empty document, and waits until it is on the disk. */
  @Command
  fun writeDocument(invoke: Invoke) =
    answer(invoke) { args, signal ->
      rightToWrite(Uri.parse(args.tree))
      val opened = resolver.openFileDescriptor(documentOf(args), "w", signal)
      (opened ?: throw FileNotFoundException()).use { to ->
        FileInputStream(args.file).use { input ->
          FileOutputStream(to.fileDescriptor).use { output -> input.copyTo(output) }
        }
        try {
          Os.fsync(to.fileDescriptor)
        } catch (e: ErrnoException) {
          // A pipe to the provider has no disk.
          if (e.errno != OsConstants.EINVAL) throw e
        }
      }
      JSObject()
    }

  @Command
  fun renameDocument(invoke: Invoke) =
    answer(invoke) { args, signal ->
      rightToWrite(Uri.parse(args.tree))
      val renamed = DocumentsContract.renameDocument(resolver, documentOf(args), args.name)
      described(renamed ?: throw IOException(), signal)
    }

  @Command
  fun removeDocument(invoke: Invoke) =
    answer(invoke) { args, _ ->
      rightToWrite(Uri.parse(args.tree))
      if (!DocumentsContract.deleteDocument(resolver, documentOf(args))) throw IOException()
      JSObject()
    }

  /** Nobody waits any more for what is under way. */
  override fun onDestroy(activity: AppCompatActivity) {
    for (signal in signals) signal.cancel()
  }

  private fun thread(work: Runnable) = Thread(work, "class-folder").apply { isDaemon = true }

  /** Does the work of a command in a thread, and answers with what came of it or a word. */
  private fun answer(invoke: Invoke, work: (ClassFolderArgs, CancellationSignal) -> JSObject) {
    val signal = CancellationSignal()
    signals.add(signal)
    // Rust waits for less; what a provider never answers keeps no thread.
    val end = clock.schedule(signal::cancel, MOST_SECONDS, TimeUnit.SECONDS)
    threads.execute {
      try {
        invoke.resolve(work(invoke.parseArgs(ClassFolderArgs::class.java), signal))
      } catch (e: Throwable) {
        val fault = word(e)
        invoke.reject(fault, fault)
      } finally {
        end.cancel(false)
        signals.remove(signal)
      }
    }
  }

  private fun word(fault: Throwable): String {
    var cause: Throwable? = fault
    while (cause != null) {
      if (cause is ErrnoException) {
        when (cause.errno) {
          OsConstants.ENOSPC, OsConstants.EDQUOT, OsConstants.EFBIG -> return "full"
          OsConstants.EACCES, OsConstants.EPERM, OsConstants.EROFS -> return "denied"
        }
      }
      cause = cause.cause
    }
    return when (fault) {
      is NotAllowed -> "not_allowed"
      is SecurityException -> "denied"
      // Providers say the second of a folder on a card that is away.
      is FileNotFoundException, is IllegalArgumentException -> "gone"
      is TimeoutException, is OperationCanceledException -> "silent"
      else -> "other"
    }
  }

  private fun right(tree: Uri): UriPermission =
    resolver.persistedUriPermissions.firstOrNull { it.uri == tree && it.isReadPermission }
      ?: throw NotAllowed()

  private fun rightToWrite(tree: Uri) {
    if (!right(tree).isWritePermission) throw SecurityException()
  }

  private fun documentOf(args: ClassFolderArgs): Uri =
    DocumentsContract.buildDocumentUriUsingTree(Uri.parse(args.tree), args.document)

  /** The name of a folder for people. Its provider has a moment to say it. */
  private fun nameOf(tree: Uri): String {
    val id = DocumentsContract.getTreeDocumentId(tree)
    val signal = CancellationSignal()
    val asked =
      threads.submit(
        Callable<String?> {
          query(DocumentsContract.buildDocumentUriUsingTree(tree, id), signal) { cursor ->
            if (cursor.moveToFirst()) text(cursor, Document.COLUMN_DISPLAY_NAME) else null
          }
        }
      )
    val name =
      try {
        asked.get(NAME_SECONDS, TimeUnit.SECONDS)
      } catch (e: Exception) {
        signal.cancel()
        null
      }
    return (name ?: id.substringAfterLast('/').substringAfterLast(':')).take(MOST_NAME)
  }

  private fun described(document: Uri, signal: CancellationSignal): JSObject =
    query(document, signal) { cursor ->
      if (cursor.moveToFirst()) JSObject().put("rows", row(cursor)) else null
    } ?: throw FileNotFoundException()

  private fun <T> query(at: Uri, signal: CancellationSignal, take: (Cursor) -> T): T {
    val found =
      try {
        resolver.query(at, COLUMNS, null, null, null, signal)
      } catch (e: SecurityException) {
        // The right to the tree was looked at before: it is the folder that is gone.
        throw FileNotFoundException()
      }
    return (found ?: throw FileNotFoundException()).use(take)
  }

  /** Whether a listing has everything. */
  private fun isWhole(cursor: Cursor): Boolean {
    val about = cursor.extras ?: return true
    if (about.getString(DocumentsContract.EXTRA_ERROR) != null) throw TimeoutException()
    return !about.getBoolean(DocumentsContract.EXTRA_LOADING)
  }

  /** The documents that are asked for, one a line. */
  private fun rows(cursor: Cursor, args: ClassFolderArgs): JSObject {
    val rows = StringBuilder()
    var looked = 0
    var listed = 0L
    var more = false
    while (cursor.moveToNext()) {
      looked += 1
      if (looked > MOST_ROWS) {
        more = true
        break
      }
      val name = text(cursor, Document.COLUMN_DISPLAY_NAME) ?: continue
      if (name.length > MOST_NAME) continue
      val named = name in args.names
      val prefix = args.prefix
      val fits =
        (prefix != null && name.startsWith(prefix)) ||
          args.extensions.any { name.endsWith(".$it", ignoreCase = true) }
      if (!named && !fits) continue
      // Half of the room is for names that are asked for, so that no others crowd them out.
      val isFull = if (named) rows.length > MOST_SIGNS else rows.length > MOST_SIGNS / 2
      if (isFull || (!named && listed >= args.most)) {
        more = true
        continue
      }
      listed += 1
      rows.append(row(cursor)).append('\n')
    }
    return JSObject().put("rows", rows.toString()).put("more", more)
  }

  /** A document: id, name, kind, whether it can be renamed, size and time, or -1. */
  private fun row(cursor: Cursor): String {
    val id = text(cursor, Document.COLUMN_DOCUMENT_ID) ?: throw IOException()
    val name = text(cursor, Document.COLUMN_DISPLAY_NAME) ?: ""
    val flags = number(cursor, Document.COLUMN_FLAGS).coerceAtLeast(0)
    val kind =
      when {
        text(cursor, Document.COLUMN_MIME_TYPE) == Document.MIME_TYPE_DIR -> "folder"
        flags and Document.FLAG_VIRTUAL_DOCUMENT.toLong() != 0L -> "other"
        else -> "file"
      }
    val renames = if (flags and Document.FLAG_SUPPORTS_RENAME.toLong() != 0L) 1 else 0
    val size = number(cursor, Document.COLUMN_SIZE)
    val time = number(cursor, Document.COLUMN_LAST_MODIFIED)
    return "${Uri.encode(id)} ${Uri.encode(name)} $kind $renames $size $time"
  }

  private fun text(cursor: Cursor, column: String): String? {
    val at = cursor.getColumnIndex(column)
    return if (at < 0) null else cursor.getString(at)
  }

  private fun number(cursor: Cursor, column: String): Long {
    val at = cursor.getColumnIndex(column)
    return if (at < 0 || cursor.isNull(at)) -1 else cursor.getLong(at)
  }

  private companion object {
    const val READ_WRITE =
      Intent.FLAG_GRANT_READ_URI_PERMISSION or Intent.FLAG_GRANT_WRITE_URI_PERMISSION
    const val MOST_LOOKS = 30
    const val PAUSE_MILLIS = 500L
    const val PART_BYTES = 64 * 1024
    const val NAME_SECONDS = 5L
    const val MOST_SECONDS = 60L

    /** Bounds of a listing, whatever its provider gives. */
    const val MOST_ROWS = 500_000
    const val MOST_SIGNS = 8_000_000
    const val MOST_NAME = 1_000

    val COLUMNS =
      arrayOf(
        Document.COLUMN_DOCUMENT_ID,
        Document.COLUMN_DISPLAY_NAME,
        Document.COLUMN_MIME_TYPE,
        Document.COLUMN_FLAGS,
        Document.COLUMN_SIZE,
        Document.COLUMN_LAST_MODIFIED,
      )
  }
}
