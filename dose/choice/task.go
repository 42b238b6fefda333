package choice

import (
	"iter"

	"example.org/posology/units/field"
)

// Task is something that a person wants to be able to do.
type Task uint8

// Tasks.
const (
	_              Task = iota // not given
	Stairs                     // "climbing stairs"
	FloorRise                  // "getting up from the floor"
	Shopping                   // "carrying shopping"
	LiftGrandchild             // "lifting a grandchild"
	Garden                     // "working in the garden"
	CarryPack                  // "carrying a pack"
	ChairRise                  // "getting up from a chair"
)

var tasks = field.NewVocabulary[Task]("task", "", "climbing stairs", "getting up from the floor", "carrying shopping",
	"lifting a grandchild", "working in the garden", "carrying a pack", "getting up from a chair")

// Tasks yields every task.
func Tasks() iter.Seq[Task] { return tasks.All() }

// String returns the task in words, such as "climbing stairs".
func (t Task) String() string { return tasks.Text(t) }

// Check returns nil if t is given.
func (t Task) Check() error { return tasks.Check("", t) }

// MarshalText writes what String returns.
func (t Task) MarshalText() ([]byte, error) { return tasks.Marshal(t) }

// UnmarshalText reads what MarshalText writes.
func (t *Task) UnmarshalText(text []byte) error { return tasks.Unmarshal(text, t) }
