package rota

import "log/slog"

// LogValue gives how much the client does, in a line of a log, without the name.
func (c Client) LogValue() slog.Value { return slog.GroupValue(slog.Int("items", len(c.Items))) }
