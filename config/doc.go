// Package config holds the shop's settings: one YAML file, above it variables
// of the environment (LAZYHAND_SHOP_NAME for shop.name), above these the flags.
//
// One table, Settings, is the source of every key: its default, its kind, what
// it says and whether a running bot can take it up. The file that init writes
// is made from it, and so is the check of what people write: an unknown key or
// a value that cannot be is refused by its line, with a suggestion, and nothing
// is used of a file with a fault.
//
// Secrets never stand in the file. They come from the environment or from a
// file of their own that a key ending in _file names, and a Secret prints as
// dots.
//
// The package knows none of the others. What only they can judge (a cron line,
// a word's meaning) is judged by the checks that Load is given.
package config
