package main

import (
	"bufio"
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
)

// eachLine calls do for every line of in and writes what it returns as one
// line of out, so that output and input stay in step. A line that fails gets
// an empty object, and its number and reason on errOut; the rest goes on and
// the end is errTold. Lines may be of any length; output is held back only
// while more input is waiting.
func eachLine(ctx context.Context, in io.Reader, out, errOut io.Writer, do func(line []byte) ([]byte, error)) error {
	r := bufio.NewReaderSize(interruptible(ctx, in), 64<<10)
	w := bufio.NewWriterSize(out, 64<<10)
	failed := false
	for n := 1; ; n++ {
		line, err := r.ReadBytes('\n')
		if ctx.Err() != nil {
			return errors.Join(w.Flush(), fmt.Errorf("stopped before line %d", n))
		}
		if err != nil && !errors.Is(err, io.EOF) {
			return errors.Join(w.Flush(), fmt.Errorf("cannot read line %d of the input: %w", n, err))
		}
		if len(line) == 0 {
			break
		}
		if n == 1 {
			line = bytes.TrimPrefix(line, []byte("\ufeff"))
		}
		result, fail := safely(do, bytes.TrimRight(line, "\r\n"))
		if fail != nil {
			failed = true
			fmt.Fprintf(errOut, "line %d: %v\n", n, fail)
			result = []byte("{}")
		}
		w.Write(result) // the writer keeps its first error for Flush
		w.WriteByte('\n')
		if r.Buffered() == 0 {
			if err := w.Flush(); err != nil {
				return fmt.Errorf("cannot write the output: %w", err)
			}
		}
	}
	if err := w.Flush(); err != nil {
		return fmt.Errorf("cannot write the output: %w", err)
	}
	if failed {
		return errTold
	}
	return nil
}

// safely turns a panic over one line into that line's error: one strange
// message must not cost the thousands behind it.
func safely(do func([]byte) ([]byte, error), line []byte) (result []byte, err error) {
	defer func() {
		if r := recover(); r != nil {
			result, err = nil, fmt.Errorf("this line makes the program fail (%v): please report it", r)
		}
	}()
	return do(line)
}

// interruptible returns a reader of in that ends when ctx does: nobody should
// have to press a key for the program to stop.
func interruptible(ctx context.Context, in io.Reader) io.Reader {
	r, w := io.Pipe()
	stop := context.AfterFunc(ctx, func() { w.CloseWithError(context.Cause(ctx)) })
	go func() {
		defer stop()
		_, err := io.Copy(w, in)
		w.CloseWithError(err)
	}()
	return r
}
