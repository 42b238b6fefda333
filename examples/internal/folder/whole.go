package folder

import (
	"os"
	"path/filepath"
	"time"
)

// Reached is told of every change of the disk once it is made. Tests end the process there.
var Reached = func(what string) {}

// stale is the age from which on a part of a file was left by somebody who was stopped.
const stale = time.Hour

// whole puts a file in its place, with all of data or not at all: it is written under another name, kept safe, and renamed.
func whole(name string, data []byte) (err error) {
	folder, base := filepath.Split(name)
	if err := os.MkdirAll(folder, 0o700); err != nil { // people's records: nobody else's to read
		return err
	}
	Reached("folder of " + base)
	sweep(folder, base)
	part, err := os.CreateTemp(folder, "."+base+".part-*")
	if err != nil {
		return err
	}
	Reached("part of " + base)
	defer func() {
		if err != nil {
			part.Close()
			os.Remove(part.Name())
		}
	}()
	if _, err = part.Write(data); err != nil {
		return err
	}
	Reached("text of " + base)
	if err = part.Sync(); err != nil {
		return err
	}
	if err = part.Close(); err != nil {
		return err
	}
	if err = os.Rename(part.Name(), name); err != nil {
		return err
	}
	Reached("name of " + base)
	return synced(folder)
}

// synced keeps the names of a folder safe, where the system can.
func synced(folder string) error {
	d, err := os.Open(folder)
	if err != nil {
		return err
	}
	defer d.Close()
	d.Sync() // some systems refuse this of a folder
	return nil
}

// sweep takes away what somebody who was stopped has left of a file long ago.
func sweep(folder, base string) {
	parts, _ := filepath.Glob(filepath.Join(folder, "."+base+".part-*"))
	for _, part := range parts {
		if info, err := os.Stat(part); err == nil && time.Since(info.ModTime()) > stale {
			os.Remove(part)
		}
	}
}
