package config

import (
	"errors"
	"os"
	"path/filepath"
	"runtime"
)

// DefaultFile is where the user's own configuration is looked for when no flag
// names one.
func DefaultFile() (string, error) {
	dir, err := os.UserConfigDir()
	if err != nil {
		return "", errors.New("this user has no folder for settings: name the file with --config")
	}
	return filepath.Join(dir, "lazyhand", "lazyhand.yaml"), nil
}

// DefaultRecord is where the record is kept when nothing names another place:
// the user's data folder, as the XDG Base Directory Specification and the
// other systems' customs have it.
func DefaultRecord() (string, error) {
	dir := os.Getenv("XDG_DATA_HOME")
	if !filepath.IsAbs(dir) { // the specification has relative ones ignored
		home, err := os.UserHomeDir()
		if err != nil {
			return "", errors.New("this user has no folder for data: name the file of the record with --db")
		}
		switch runtime.GOOS {
		case "darwin":
			dir = filepath.Join(home, "Library", "Application Support")
		case "windows":
			if dir = os.Getenv("LocalAppData"); dir == "" {
				dir = filepath.Join(home, "AppData", "Local")
			}
		default:
			dir = filepath.Join(home, ".local", "share")
		}
	}
	return filepath.Join(dir, "lazyhand", "lazyhand.db"), nil
}

// RecordFile is the file of the record under these settings.
func (c Config) RecordFile() (string, error) {
	if c.Record.File != "" {
		return c.Record.File, nil
	}
	return DefaultRecord()
}

// BackupFolder is where backups of the record in file go under these settings.
func (c Config) BackupFolder(file string) string {
	if c.Backup.Folder != "" {
		return c.Backup.Folder
	}
	return filepath.Join(filepath.Dir(file), "backup")
}
