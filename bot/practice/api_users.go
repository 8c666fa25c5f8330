package practice

import "slices"

// wire is the person as users.info shows them.
func (u *User) wire(w *Workspace) map[string]any {
	name, offset := w.now().In(u.Location).Zone()
	team := w.teamID
	if u.Stranger {
		team = "T0OTHER01"
	}
	return map[string]any{"id": u.ID, "team_id": team, "name": u.Name, "real_name": u.RealName, "deleted": false,
		"is_bot": false, "is_app_user": false, "is_admin": u.Admin, "is_owner": false, "is_restricted": u.Guest,
		"is_ultra_restricted": false, "is_stranger": u.Stranger, "updated": 0,
		"tz": u.Location.String(), "tz_label": name, "tz_offset": offset,
		"profile": map[string]any{"real_name": u.RealName, "display_name": u.Name, "title": u.Title, "team": team}}
}

// wireBot is an app's bot user.
func (a *app) wireBot(w *Workspace) map[string]any {
	return map[string]any{"id": a.userID, "team_id": w.teamID, "name": a.Name, "real_name": a.Name, "deleted": false,
		"is_bot": true, "is_app_user": false, "updated": 0, "tz": "America/Los_Angeles", "tz_offset": -28800,
		"profile": map[string]any{"real_name": a.Name, "display_name": a.Name, "bot_id": a.botID, "api_app_id": a.ID, "team": w.teamID}}
}

func (c *call) userInfo() (result, error) {
	id := c.str("user")
	if u := c.w.user(id); u != nil && u.ID == id {
		return result{"user": u.wire(c.w)}, nil
	}
	for _, a := range c.w.apps {
		if a.userID == id {
			return result{"user": a.wireBot(c.w)}, nil
		}
	}
	return nil, refuse("user_not_found")
}

func (c *call) listUsers() (result, error) {
	var all []any
	for _, u := range c.w.users {
		all = append(all, u.wire(c.w))
	}
	for _, a := range c.w.apps {
		all = append(all, a.wireBot(c.w))
	}
	from, to, next, err := c.page(len(all), c.number("limit", 1000, 1, 1000))
	if err != nil {
		return nil, err
	}
	return result{"members": all[from:to], "cache_ts": c.w.now().Unix(), "response_metadata": map[string]any{"next_cursor": next}}, nil
}

func (c *call) teamInfo() (result, error) {
	return result{"team": map[string]any{"id": c.w.teamID, "name": c.w.opts.Name, "domain": c.w.opts.Name, "url": c.w.url + "/"}}, nil
}

func (c *call) botInfo() (result, error) {
	for _, a := range c.w.apps {
		if a.botID == c.str("bot") {
			return result{"bot": map[string]any{"id": a.botID, "app_id": a.ID, "user_id": a.userID, "name": a.Name, "deleted": false, "updated": 0}}, nil
		}
	}
	return nil, refuse("bot_not_found")
}

func (g *Group) wire(w *Workspace) map[string]any {
	return map[string]any{"id": g.ID, "team_id": w.teamID, "is_usergroup": true, "is_external": false, "name": g.Name,
		"handle": g.Handle, "description": "", "date_create": 0, "date_update": 0, "date_delete": 0,
		"user_count": len(g.Users), "users": g.Users}
}

func (c *call) listGroups() (result, error) {
	out := []any{}
	for _, g := range c.w.groups {
		wire := g.wire(c.w)
		if !c.is("include_users") {
			delete(wire, "users")
		}
		out = append(out, wire)
	}
	return result{"usergroups": out}, nil
}

func (c *call) groupUsers() (result, error) {
	for _, g := range c.w.groups {
		if g.ID == c.str("usergroup") {
			return result{"users": slices.Clone(g.Users)}, nil
		}
	}
	return nil, refuse("no_such_subteam")
}
