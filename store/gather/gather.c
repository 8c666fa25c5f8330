// SQLite's file system of the machine, with one change: see the comment of the
// Go package. What is declared here is SQLite's own published interface,
// https://sqlite.org/c3ref/vfs.html and https://sqlite.org/c3ref/io_methods.html;
// the driver brings SQLite itself.

#include <stdlib.h>
#include <string.h>

typedef long long sqlite3_int64;
typedef struct sqlite3_file sqlite3_file;
typedef struct sqlite3_io_methods sqlite3_io_methods;
typedef struct sqlite3_vfs sqlite3_vfs;

struct sqlite3_file {
  const sqlite3_io_methods *pMethods;
};

struct sqlite3_io_methods { // version 1: more is never asked of a log
  int iVersion;
  int (*xClose)(sqlite3_file *);
  int (*xRead)(sqlite3_file *, void *, int, sqlite3_int64);
  int (*xWrite)(sqlite3_file *, const void *, int, sqlite3_int64);
  int (*xTruncate)(sqlite3_file *, sqlite3_int64);
  int (*xSync)(sqlite3_file *, int);
  int (*xFileSize)(sqlite3_file *, sqlite3_int64 *);
  int (*xLock)(sqlite3_file *, int);
  int (*xUnlock)(sqlite3_file *, int);
  int (*xCheckReservedLock)(sqlite3_file *, int *);
  int (*xFileControl)(sqlite3_file *, int, void *);
  int (*xSectorSize)(sqlite3_file *);
  int (*xDeviceCharacteristics)(sqlite3_file *);
};

struct sqlite3_vfs {
  int iVersion;
  int szOsFile;
  int mxPathname;
  sqlite3_vfs *pNext;
  const char *zName;
  void *pAppData;
  int (*xOpen)(sqlite3_vfs *, const char *, sqlite3_file *, int, int *);
  int (*xDelete)(sqlite3_vfs *, const char *, int);
  int (*xAccess)(sqlite3_vfs *, const char *, int, int *);
  int (*xFullPathname)(sqlite3_vfs *, const char *, int, char *);
  void *(*xDlOpen)(sqlite3_vfs *, const char *);
  void (*xDlError)(sqlite3_vfs *, int, char *);
  void (*(*xDlSym)(sqlite3_vfs *, void *, const char *))(void);
  void (*xDlClose)(sqlite3_vfs *, void *);
  int (*xRandomness)(sqlite3_vfs *, int, char *);
  int (*xSleep)(sqlite3_vfs *, int);
  int (*xCurrentTime)(sqlite3_vfs *, double *);
  int (*xGetLastError)(sqlite3_vfs *, int, char *);
  int (*xCurrentTimeInt64)(sqlite3_vfs *, sqlite3_int64 *);
  int (*xSetSystemCall)(sqlite3_vfs *, const char *, void (*)(void));
  void (*(*xGetSystemCall)(sqlite3_vfs *, const char *))(void);
  const char *(*xNextSystemCall)(sqlite3_vfs *, const char *);
};

#define SQLITE_OK 0
#define SQLITE_NOMEM 7
#define SQLITE_OPEN_WAL 0x00080000

// Found by the linker where the driver's SQLite is in the program.
extern sqlite3_vfs *sqlite3_vfs_find(const char *) __attribute__((weak));
extern int sqlite3_vfs_register(sqlite3_vfs *, int) __attribute__((weak));

// HOLDS is how much is gathered at most, bytes: some thirty frames of the log.
// SQLite's file system for Unix writes less than 128 KiB at a time.
#define HOLDS (124 * 1024)

// gathered is a log. What was written to it and has not reached the file yet is
// one run of bytes.
typedef struct {
  sqlite3_file base;
  sqlite3_file *file; // the machine's
  char *run;          // HOLDS bytes
  sqlite3_int64 at;   // where the run belongs
  int n;              // its length, 0 for none
} gathered;

// let writes the run to the file. One that fails stays, and is tried again by
// whatever comes next: nothing is lost by it but the time.
static int let(gathered *g) {
  if (g->n == 0) return SQLITE_OK;
  int rc = g->file->pMethods->xWrite(g->file, g->run, g->n, g->at);
  if (rc == SQLITE_OK) g->n = 0;
  return rc;
}

static int gWrite(sqlite3_file *f, const void *data, int n, sqlite3_int64 at) {
  gathered *g = (gathered *)f;
  if (g->n > 0 && (at != g->at + g->n || g->n + n > HOLDS)) {
    int rc = let(g);
    if (rc != SQLITE_OK) return rc;
  }
  if (n > HOLDS) return g->file->pMethods->xWrite(g->file, data, n, at);
  if (g->n == 0) g->at = at;
  memcpy(g->run + g->n, data, n);
  g->n += n;
  return SQLITE_OK;
}

static int gRead(sqlite3_file *f, void *data, int n, sqlite3_int64 at) {
  gathered *g = (gathered *)f;
  int rc = let(g);
  return rc != SQLITE_OK ? rc : g->file->pMethods->xRead(g->file, data, n, at);
}

static int gTruncate(sqlite3_file *f, sqlite3_int64 size) {
  gathered *g = (gathered *)f;
  if (g->at >= size) g->n = 0; // cut off with the rest
  int rc = let(g);
  return rc != SQLITE_OK ? rc : g->file->pMethods->xTruncate(g->file, size);
}

static int gSync(sqlite3_file *f, int flags) {
  gathered *g = (gathered *)f;
  int rc = let(g);
  return rc != SQLITE_OK ? rc : g->file->pMethods->xSync(g->file, flags);
}

static int gFileSize(sqlite3_file *f, sqlite3_int64 *size) {
  gathered *g = (gathered *)f;
  int rc = let(g);
  return rc != SQLITE_OK ? rc : g->file->pMethods->xFileSize(g->file, size);
}

static int gClose(sqlite3_file *f) {
  gathered *g = (gathered *)f;
  int rc = g->file->pMethods->xClose(g->file); // what is left was never committed
  free(g->run);
  g->base.pMethods = NULL;
  return rc;
}

static int gLock(sqlite3_file *f, int how) {
  gathered *g = (gathered *)f;
  return g->file->pMethods->xLock(g->file, how);
}

static int gUnlock(sqlite3_file *f, int how) {
  gathered *g = (gathered *)f;
  return g->file->pMethods->xUnlock(g->file, how);
}

static int gCheckReservedLock(sqlite3_file *f, int *out) {
  gathered *g = (gathered *)f;
  return g->file->pMethods->xCheckReservedLock(g->file, out);
}

static int gFileControl(sqlite3_file *f, int what, void *arg) {
  gathered *g = (gathered *)f;
  return g->file->pMethods->xFileControl(g->file, what, arg);
}

static int gSectorSize(sqlite3_file *f) {
  gathered *g = (gathered *)f;
  return g->file->pMethods->xSectorSize(g->file);
}

static int gDeviceCharacteristics(sqlite3_file *f) {
  gathered *g = (gathered *)f;
  return g->file->pMethods->xDeviceCharacteristics(g->file);
}

static const sqlite3_io_methods methods = {
    1,         gClose, gRead,   gWrite,             gTruncate,    gSync,       gFileSize,
    gLock,     gUnlock, gCheckReservedLock, gFileControl, gSectorSize, gDeviceCharacteristics,
};

static sqlite3_vfs *machine; // the machine's file system
static sqlite3_vfs ours;

static int gOpen(sqlite3_vfs *vfs, const char *name, sqlite3_file *f, int flags, int *out) {
  if (!(flags & SQLITE_OPEN_WAL)) return machine->xOpen(machine, name, f, flags, out);
  gathered *g = (gathered *)f;
  memset(g, 0, sizeof *g);
  g->file = (sqlite3_file *)(g + 1);
  g->run = malloc(HOLDS);
  if (g->run == NULL) return SQLITE_NOMEM;
  int rc = machine->xOpen(machine, name, g->file, flags, out);
  if (rc != SQLITE_OK) {
    if (g->file->pMethods != NULL) g->file->pMethods->xClose(g->file);
    free(g->run);
    return rc;
  }
  g->base.pMethods = &methods;
  return rc;
}

// gather_register makes the file system known to SQLite; it returns 0 when it
// is.
int gather_register(const char *name) {
  if (sqlite3_vfs_find == NULL || sqlite3_vfs_register == NULL) return 1;
  machine = sqlite3_vfs_find(NULL);
  if (machine == NULL) return 1;
  ours = *machine;
  ours.zName = name;
  ours.pNext = NULL;
  ours.xOpen = gOpen;
  ours.szOsFile = sizeof(gathered) + machine->szOsFile;
  return sqlite3_vfs_register(&ours, 0);
}
